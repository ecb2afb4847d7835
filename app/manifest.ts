import type { MetadataRoute } from "next";

/** Lets a phone keep the product on its home screen, where its storage is less likely to be cleared. */
export default function manifest(): MetadataRoute.Manifest {
  return {
    name: "Shutterwright",
    short_name: "Shutterwright",
    description: "Columns to cut, stand, clamp, plumb, pour and strip.",
    id: "/",
    start_url: "/projects",
    scope: "/",
    display: "standalone",
    background_color: "#fbfaf6",
    theme_color: "#17201d",
    icons: [
      { src: "/icons/column.svg", sizes: "any", type: "image/svg+xml" },
      { src: "/icons/column-192.png", sizes: "192x192", type: "image/png" },
      { src: "/icons/column-512.png", sizes: "512x512", type: "image/png" },
      { src: "/icons/column-maskable-512.png", sizes: "512x512", type: "image/png", purpose: "maskable" },
    ],
  };
}
