import { type LengthUnit, unitNamed } from "./read-length.ts";

/** Every column of a schedule that is understood. `links` and `count` are understood so as to be left alone. */
export type Field =
  | "mark" | "grid" | "shape" | "size" | "width" | "depth" | "diameter"
  | "level" | "fromLevel" | "toLevel" | "fromElevation" | "toElevation" | "height"
  | "concrete" | "mainBars" | "links" | "remarks" | "count";

export type Heading = { readonly field: Field; readonly unit: LengthUnit | null };

/** Headings as schedules in English write them, without unit and punctuation. Common practice, no source. */
const WORDS: Readonly<Record<Field, RegExp>> = {
  mark: /^(?:(?:column|col|member) )?(?:mark|ref|reference|id|type|name|type mark)$|^(?:column|col|columns)(?: no)?$|^mark (?:no|ref)$/,
  grid: /^(?:at |column |col )?grid(?: ?lines?)?(?: (?:ref|reference|refs|location|locations|position|intersection))?$|^(?:column )?(?:location|locations|position)$|^grids$/,
  shape: /^(?:(?:section|column|col) )?(?:shape|profile|form of section)$/,
  size: /^(?:(?:column|col|section|cross section|overall) )?(?:size|sizes|dimension|dimensions)(?: (?:[bwl] ?x ?[dhw]|width x depth))?$|^(?:section|cross section|[bwl] ?x ?[dhw]|width x depth|breadth x depth)$/,
  width: /^(?:(?:column|col|section) )?(?:width|breadth)(?: [bw])?$|^[bw]$|^(?:dim|side|size) (?:1|a|b|x)$/,
  depth: /^(?:(?:column|col|section) )?depth(?: [dh])?$|^[dh]$|^(?:dim|side|size) (?:2|d|y)$/,
  diameter: /^(?:(?:column|col) )?(?:dia|diam|diameter|\u00f8)(?: d)?$/,
  level: /^(?:level|levels|lvl|storey|storeys|story|stories|floor|floors|lift|lifts|between levels|level range)(?: (?:name|ref))?$/,
  fromLevel: /^(?:from|base|bottom|lower|start|bot) ?(?:level|floor|storey|story|lvl)?$|^(?:level|floor|storey|story) from$/,
  toLevel: /^(?:to|top|upper|end|up to) ?(?:level|floor|storey|story|lvl)?$|^(?:level|floor|storey|story) to$/,
  fromElevation: /^(?:(?:from|base|bottom|lower|start|level|floor|slab) )?(?:elevation|elev|el|rl|ssl|ffl|fsl|sfl|reduced level)$|^(?:rl|ssl|elevation) (?:from|base|bottom)$/,
  toElevation: /^(?:to|top|upper|end) (?:elevation|elev|el|rl|ssl|ffl|fsl|sfl|reduced level)$|^(?:rl|ssl|elevation) (?:to|top)$/,
  height: /^(?:(?:storey|story|floor|floor to floor|column|col|lift|level) )?(?:height|ht)$|^floor to floor$|^f ?f(?: height| ht)?$|^hgt$/,
  concrete: /^(?:concrete|conc)(?: (?:grade|class|strength|mix))?$|^(?:grade|strength class|strength|f ?c|fck|mix)$/,
  mainBars: /^(?:(?:main|vertical|vert|longitudinal|long) )(?:bars|bar|steel|reinforcement|reinf|reo|rebar)$|^(?:bars|reinforcement|reinf|reo|rebar|verticals|main)$/,
  links: /^(?:links|link|ties|tie|stirrups|ligs|ligatures|fitments|hoops|spirals|tie spacing|transverse (?:bars|steel|reinforcement))$/,
  remarks: /^(?:remarks?|notes?|comments?)$/,
  count: /^(?:qty|quantity|count|number|no|no off|nos|number of columns|no of columns)$/,
};

const FIELDS = Object.keys(WORDS) as readonly Field[];
const MAX_HEADING_TEXT = 60;

/** Reads one heading, its unit in brackets, after a comma or as the last word; null when it is none we know. */
export function readHeading(text: string): Heading | null {
  if (text === "" || text.length > MAX_HEADING_TEXT) return null;
  const { words, unit } = apartFromUnit(text.toLowerCase().replace(/\s+/g, " ").replace(/[\u00d7*]/g, "x"));
  const plain = words.replace(/[^a-z0-9\u00f8 ]+/g, " ").replace(/\s+/g, " ").trim();
  const field = FIELDS.find((name) => WORDS[name].test(plain));
  return field ? { field, unit } : null;
}

function apartFromUnit(text: string): { words: string; unit: LengthUnit | null } {
  const bracketed = /^(.*?)[([]\s*(?:in )?([a-z"'/-]+)\s*[)\]]\s*$/.exec(text);
  const trailing = /^(.*?\S)(?:,\s*|\s+in\s+|\s+)(mm|cm|m|in|inches|ft|feet|ft-in)\.?$/.exec(text);
  for (const found of [bracketed, trailing]) {
    const unit = found?.[2] ? unitNamed(found[2]) : null;
    if (found?.[1] && unit) return { words: found[1], unit };
  }
  // Another unit, such as (MPa), or a word of explanation.
  return { words: text.replace(/\s*[([][^()[\]]*[)\]]\s*$/, "") || text, unit: null };
}
