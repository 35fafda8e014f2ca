import { useCallback, useMemo, useState, type KeyboardEvent } from 'react';
import type { Box } from './projection.js';

export interface MapWindow {
  /** Part of the campus that is shown, in feet. */
  readonly box: Box;
  /** Feet to a pixel. */
  readonly feet: number;
  readonly zoom: (factor: number) => void;
  /** Moves by shares of the window. */
  readonly move: (right: number, down: number) => void;
  readonly reset: () => void;
  readonly onKeyDown: (event: KeyboardEvent) => void;
}

interface View {
  readonly x: number;
  readonly y: number;
  readonly zoom: number;
}

const MOST_ZOOM = 40;

/** What part of an extent a map of a given size shows; keys and buttons change it. */
export function useMapWindow(extent: Box, size: { width: number; height: number }): MapWindow {
  const fit = Math.max(extent.width / size.width, extent.height / size.height);
  const [view, setView] = useState<View>({ x: 0.5, y: 0.5, zoom: 1 });
  const feet = fit / view.zoom;
  const box = useMemo(() => {
    const [width, height] = [size.width * feet, size.height * feet];
    const left = extent.left + view.x * extent.width - width / 2;
    const top = extent.top + view.y * extent.height - height / 2;
    return { left, top, width, height };
  }, [extent, feet, size.width, size.height, view]);

  const zoom = useCallback((factor: number) => {
    setView((old) => ({ ...old, zoom: Math.min(MOST_ZOOM, Math.max(1, old.zoom * factor)) }));
  }, []);
  const move = useCallback((right: number, down: number) => {
    setView((old) => ({
      ...old,
      x: clamp(old.x + right / old.zoom),
      y: clamp(old.y + down / old.zoom),
    }));
  }, []);
  const reset = useCallback(() => setView({ x: 0.5, y: 0.5, zoom: 1 }), []);

  const onKeyDown = (event: KeyboardEvent): void => {
    const act = keyActs({ zoom, move, reset })[event.key];
    if (act === undefined) return;
    event.preventDefault();
    act();
  };
  return { box, feet, zoom, move, reset, onKeyDown };
}

function keyActs({ zoom, move, reset }: Pick<MapWindow, 'zoom' | 'move' | 'reset'>) {
  const acts: Readonly<Record<string, () => void>> = {
    '+': () => zoom(1.5),
    '=': () => zoom(1.5),
    '-': () => zoom(1 / 1.5),
    '0': reset,
    ArrowLeft: () => move(-0.2, 0),
    ArrowRight: () => move(0.2, 0),
    ArrowUp: () => move(0, -0.2),
    ArrowDown: () => move(0, 0.2),
  };
  return acts;
}

const clamp = (share: number): number => Math.min(1, Math.max(0, share));
