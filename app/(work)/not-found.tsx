import { NothingHere } from "#app/nothing-here.tsx";

export default function WorkNotFound() {
  return <NothingHere />;
}
