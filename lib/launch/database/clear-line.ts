/** A failure told to the person at the terminal in one line that says what to do. Anything else thrown is a fault. */
export class ClearLine extends Error {
  override readonly name = "ClearLine";
}
