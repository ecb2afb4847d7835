import { NothingHere } from "#app/_ui/page/nothing-here.tsx";

export default function WorkNotFound() {
  return <NothingHere />;
}
