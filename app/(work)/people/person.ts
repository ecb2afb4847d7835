export type Person = {
  readonly id: string; readonly name: string; readonly email: string; readonly role: string; readonly isActive: boolean;
};
