"use client";

import type { ReactNode } from "react";
import { Tab, TabList, TabPanel, Tabs as AriaTabs } from "react-aria-components";

export type TabItem = { readonly id: string; readonly label: string; readonly content: ReactNode };

export type TabsProps = {
  readonly label: string;
  readonly items: readonly TabItem[];
  readonly selected?: string;
  readonly onSelect?: (id: string) => void;
};

/** Several views of one thing in one place; for going to another page use NavBar. */
export function Tabs({ label, items, selected, onSelect }: TabsProps) {
  return (
    <AriaTabs {...(selected === undefined ? {} : { selectedKey: selected })} onSelectionChange={(key) => onSelect?.(String(key))}>
      <TabList aria-label={label} className="no-print flex flex-wrap border-b-2 border-ink">
        {items.map((item) => (
          <Tab
            key={item.id}
            id={item.id}
            className="-mb-0.5 flex min-h-glove cursor-pointer items-center border-2 border-transparent px-5 font-semibold data-hovered:bg-accent-wash data-selected:border-ink data-selected:border-b-sheet data-selected:bg-sheet data-selected:text-accent sm:min-h-hand"
          >
            {item.label}
          </Tab>
        ))}
      </TabList>
      {items.map((item) => (
        <TabPanel key={item.id} id={item.id} className="pt-4">{item.content}</TabPanel>
      ))}
    </AriaTabs>
  );
}
