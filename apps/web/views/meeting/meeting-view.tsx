import { useCallback, useEffect, useRef, useState, type ReactNode, type RefObject } from 'react';
import { Documents } from '../../sections/documents.js';
import type { PlanContent } from '../../state/desk-context.js';
import { strings } from '../../strings.data.js';
import { slidesOf, type Slide } from './slides.js';
import './meeting.css';

const words = strings.meeting;

/** The story for a room, one page at a time by keys alone, and the documents to hand out. */
export default function MeetingView({ content }: { readonly content: PlanContent }): ReactNode {
  const slides = slidesOf(content.overview);
  const [place, setPlace] = useState(0);
  const stage = useRef<HTMLElement>(null);
  const show = useCallback(
    (to: number) => setPlace(Math.min(slides.length - 1, Math.max(0, to))),
    [slides.length],
  );
  useStoryKeys(stage, { place, last: slides.length - 1, show });
  return (
    <>
      <h1 className="view-heading">{words.heading}</h1>
      <p>{words.lead}</p>
      <section
        className="stage"
        ref={stage}
        aria-label={words.story}
        aria-roledescription={words.storyRole}
        tabIndex={0}
      >
        <StorySlide slide={slides[place]} />
        <p className="stage-foot" role="status">
          {words.place(place + 1, slides.length)}
        </p>
      </section>
      <p className="form-buttons no-print">
        <button type="button" aria-disabled={place === 0} onClick={() => show(place - 1)}>
          {words.back}
        </button>
        <button
          type="button"
          className="primary"
          aria-disabled={place === slides.length - 1}
          onClick={() => show(place + 1)}
        >
          {words.forward}
        </button>
        <button type="button" onClick={() => void enterFullScreen(stage.current)}>
          {words.fullScreen}
        </button>
      </p>
      <div className="all-slides" aria-hidden="true">
        {slides.map((slide) => (
          <StorySlide key={slide.title} slide={slide} />
        ))}
      </div>
      <Documents planId={content.plan.id} />
    </>
  );
}

function StorySlide({ slide }: { readonly slide: Slide | undefined }): ReactNode {
  if (slide === undefined) return null;
  return (
    <div className="slide">
      <h2>{slide.title}</h2>
      <div className="slide-body">{slide.body}</div>
    </div>
  );
}

interface Story {
  readonly place: number;
  readonly last: number;
  readonly show: (to: number) => void;
}

/** Arrows, Page Up and Down, space, Home and End turn the pages; F fills the screen. */
function useStoryKeys(stage: RefObject<HTMLElement | null>, { place, last, show }: Story): void {
  useEffect(() => {
    const press = (event: KeyboardEvent): void => {
      if (event.ctrlKey || event.metaKey || event.altKey) return;
      const at = event.target;
      const isElsewhere =
        at instanceof Element && at.closest('a, button, select, input, .table-box');
      if (isElsewhere) return;
      const to = placeOf(event.key, place, last);
      if (to !== null) show(to);
      else if (event.key === 'f') void enterFullScreen(stage.current);
      else return;
      event.preventDefault();
    };
    window.addEventListener('keydown', press);
    return () => window.removeEventListener('keydown', press);
  }, [stage, place, last, show]);
}

function placeOf(key: string, place: number, last: number): number | null {
  if (['ArrowRight', 'PageDown', ' '].includes(key)) return place + 1;
  if (['ArrowLeft', 'PageUp'].includes(key)) return place - 1;
  if (key === 'Home') return 0;
  return key === 'End' ? last : null;
}

/** A browser that does not fill the screen leaves the story where it is. */
async function enterFullScreen(stage: HTMLElement | null): Promise<void> {
  if (document.fullscreenElement !== null) return document.exitFullscreen();
  await stage?.requestFullscreen().catch(() => undefined);
  stage?.focus();
}
