import { nothingHere } from "../_parts/answer.ts";

export { nothingHere as GET, nothingHere as POST, nothingHere as PUT, nothingHere as PATCH, nothingHere as DELETE };
