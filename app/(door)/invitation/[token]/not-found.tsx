export default function InvitationNotFound() {
  return (
    <div className="flex flex-col gap-3">
      <h1 className="text-2xl">This invitation is not open</h1>
      <p>It was used, taken back, or has run out; or the link was not copied whole. Ask the owner of the company for a new one.</p>
    </div>
  );
}
