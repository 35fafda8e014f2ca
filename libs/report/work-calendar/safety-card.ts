import { caution } from '../document/boxes.js';
import type { Block } from '../document/plan-document.js';
import { heading, list, smallPrint } from '../document/text-blocks.js';

/** What is checked before and during every work day. Environmental health and safety reviews the words. */
export function safetyCard(): readonly Block[] {
  return [
    caution('stop the work', [
      'Thunder or lightning: stop, go inside, and wait 30 minutes after the last thunder. Heat index 90 °F or more: stop heavy work, water and shade for all. A strange smell, cable, pipe or find in the ground: stop, step back, call.',
    ]),
    heading(2, 'Before people come'),
    list('checkbox', [
      'Locate marks are there, and the ticket still holds. Hand digging within the width that state law sets.',
      'Forecast read: heat index from 80 °F means more breaks, and new people work up to the heat over days; in cold and wet, dry layers and warm breaks.',
      'First aid kit, water, sun and tick protection, wash water and soap, a phone with signal.',
      'Leaders: at least 1 for 10 people, 1 for 6 minors, 1 trained for each power tool. The rule on minors and background checks is met.',
      'Waivers signed, ages and emergency contacts taken, and kept private.',
    ]),
    heading(2, 'As people work'),
    list('checkbox', [
      'Closed shoes and gloves; tetanus shots are recommended. Wheelbarrows half full. Two people lift more than 50 lb.',
      'Nobody stands behind a truck; a spotter guides every truck that backs.',
      'Power tools, ladders and vehicles: trained staff only. Pesticides, organic ones too: licensed applicator only, posted, never volunteers.',
      'Trees: no digging, piling or trucks under the canopy beyond what the arborist allows; nothing against a trunk. No pruning of oaks in the growing season.',
      'Compost: no batch without its log on food ground; dust mask when dry. Wash hands after soil work; soil results are a screening, not a clearance.',
      'Food: no one ill picks; clean tools; lots by site and date; droppings and nuts, peanuts, soy, sesame, wheat and look-alike plants kept out. The kitchen decides what it takes.',
      'Volunteers work beside represented staff, never in their place.',
    ]),
    heading(2, 'If someone is hurt'),
    list('checkbox', [
      'Call 911, then campus safety: ____________   Meeting point for the ambulance: ____________',
      'Stings and allergies: ask for an auto-injector. Tell the program manager the same day; write it down.',
    ]),
    smallPrint(
      'Local codes, environmental health and safety, and licensed practice go before this card. Numbers of people per leader, lifting and heat are common practice; the institution sets its own.',
    ),
  ];
}
