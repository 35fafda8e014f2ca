/**
 * A copy of the defaults table. It says nothing about where the numbers come from (the table does); it
 * makes every change of a number show, since it must be made here too.
 * key | unit | low typical high | least and most possible | basis and year
 */
export const LOCKED_DEFAULTS = `
takeoff.compost-inches | in | 2 4 6 | 0 24 | common practice 2026
takeoff.chip-inches | in | 2 3 6 | 0 24 | common practice 2026
takeoff.chip-inches-without-barrier | in | 8 10 12 | 0 24 | published 2021
takeoff.waste | share | 0 0.05 0.15 | 0 0.5 | common practice 2026
takeoff.settled-share | share of loose depth | 0.55 0.65 0.75 | 0.2 1 | common practice 2026
takeoff.root-protection-compost-inches | in | 0 1 1 | 0 1 | judgement 2026
takeoff.root-protection-chip-inches | in | 2 3 4 | 0 4 | published 2026
density.compost | lb/cu yd | 800 1000 1400 | 300 2200 | published 2026
density.wood-chips | lb/cu yd | 240 500 700 | 100 2200 | published 2005
density.leaf-mold | lb/cu yd | 600 750 900 | 200 2200 | common practice 2026
cardboard.sheet-length | ft | 3 4 8 | 0.5 20 | common practice 2026
cardboard.sheet-width | ft | 2 3 6 | 0.5 20 | common practice 2026
cardboard.roll-width | ft | 3 6 6 | 1 12 | published 2026
cardboard.lap | in | 6 6 12 | 0 24 | published 2026
cardboard.weight | lb/sf | 0.12 0.15 0.18 | 0.05 1 | common practice 2026
cardboard.roll-price | $/sf | 0.119 0.126 0.129 | 0 5 | published 2026
truck.box | cu yd | 10 16 20 | 1 60 | common practice 2026
truck.payload | lb | 16000 22000 30000 | 1000 60000 | common practice 2026
staging.pile-height | ft | 3 4 6 | 0.5 12 | judgement 2026
plants.spare | share | 0.05 0.075 0.1 | 0 0.5 | common practice 2026
plants.spacing-plug | ft | 0.75 1 1.5 | 0.25 5 | common practice 2026
plants.spacing-perennial | ft | 1.5 1.75 2 | 0.5 6 | common practice 2026
plants.spacing-berry | ft | 3 4 5 | 1 12 | common practice 2026
plants.spacing-fruit-tree | ft | 12 15 18 | 5 40 | common practice 2026
plants.price-plug | $ | 2 3 5 | 0 50 | judgement 2026
plants.price-perennial | $ | 6 10 16 | 0 100 | judgement 2026
plants.price-berry | $ | 12 20 35 | 0 300 | judgement 2026
plants.price-fruit-tree | $ | 50 90 180 | 0 2000 | judgement 2026
install.aerate-and-mow | sf/person-h | 1500 2000 2500 | 100 50000 | judgement 2026
install.compost-by-hand | cu yd/person-h | 0.5 0.65 0.8 | 0.05 5 | judgement 2026
install.compost-by-machine | cu yd/person-h | 3 3.5 4 | 0.5 40 | judgement 2026
install.cardboard | sf/person-h | 120 160 200 | 10 2000 | judgement 2026
install.chips-by-hand | cu yd/person-h | 0.6 0.75 0.9 | 0.05 5 | judgement 2026
install.plugs | plants/person-h | 25 32 40 | 1 400 | judgement 2026
install.gallon-plants | plants/person-h | 6 8 10 | 0.5 100 | judgement 2026
install.trees | trees/person-h | 0.3 0.4 0.6 | 0.02 10 | judgement 2026
install.edging | ft/person-h | 15 25 40 | 1 400 | judgement 2026
install.haul-per-ft | share/ft | 0.001 0.0018 0.003 | 0 0.02 | judgement 2026
install.haul-free-ft | ft | 30 50 100 | 0 500 | judgement 2026
learning.install-rate | share at each doubling | 0.85 0.9 0.95 | 0.5 1 | judgement 2026
learning.care-rate | share at each doubling | 0.93 0.95 1 | 0.5 1 | judgement 2026
learning.floor | share of first | 0.6 0.65 0.8 | 0 1 | judgement 2026
learning.kept-after-turnover | share | 0.4 0.55 0.7 | 0 1 | judgement 2026
volunteers.show-rate | share | 0.5 0.6 0.7 | 0 1 | common practice 2026
volunteers.show-spread | share | 0.05 0.1 0.2 | 0 0.5 | judgement 2026
volunteers.day-hours | h | 2 3 3 | 0.5 10 | common practice 2026
volunteers.effectiveness | share | 0.35 0.45 0.6 | 0 1 | judgement 2026
leaders.people-each | people/leader | 8 10 15 | 1 40 | published 2026
leaders.minors-each | people/leader | 4 6 8 | 1 20 | common practice 2026
leaders.power-equipment-each | people/leader | 1 1 1 | 1 1 | common practice 2026
futures.pledged-arrives | share | 0.8 0.9 0.97 | 0 1 | judgement 2026
futures.hoped-for-arrives | share | 0.3 0.5 0.7 | 0 1 | judgement 2026
futures.work-day-lost | share of work days | 0.03 0.08 0.15 | 0 1 | judgement 2026
futures.staff-leave | share/yr | 0.08 0.14 0.25 | 0 1 | judgement 2026
futures.vacancy-seasons | seasons | 1 2 4 | 0 20 | judgement 2026
futures.compost-spread | share | 0.1 0.25 0.4 | 0 1 | judgement 2026
futures.construction-price-shock | share/yr | 0.01 0.03 0.05 | 0 0.3 | judgement 2026
futures.wages-price-shock | share/yr | 0.002 0.005 0.01 | 0 0.3 | judgement 2026
futures.supplies-price-shock | share/yr | 0.01 0.025 0.05 | 0 0.3 | judgement 2026
futures.price-shock-carried | share | 0 0.5 0.8 | 0 0.95 | judgement 2026
futures.works-slip | share/yr | 0.15 0.3 0.5 | 0 0.9 | judgement 2026
care.annual-bed.first-year | h/1,000 sf-yr | 100 150 200 | 0 1000 | published 2026
care.annual-bed.mature | h/1,000 sf-yr | 80 120 160 | 0 1000 | published 2026
care.annual-bed.decay | 1/yr | 0.4 0.7 1.2 | 0 5 | judgement 2026
care.perennial-bed.first-year | h/1,000 sf-yr | 50 75 110 | 0 1000 | judgement 2026
care.perennial-bed.mature | h/1,000 sf-yr | 13 22 35 | 0 1000 | judgement 2026
care.perennial-bed.decay | 1/yr | 0.4 0.7 1.2 | 0 5 | judgement 2026
care.woody.first-year | h/1,000 sf-yr | 35 55 80 | 0 1000 | judgement 2026
care.woody.mature | h/1,000 sf-yr | 10 18 30 | 0 1000 | judgement 2026
care.woody.decay | 1/yr | 0.4 0.6 1.2 | 0 5 | judgement 2026
care.rain-garden.first-year | h/1,000 sf-yr | 40 60 90 | 0 1000 | judgement 2026
care.rain-garden.mature | h/1,000 sf-yr | 12 20 32 | 0 1000 | judgement 2026
care.rain-garden.decay | 1/yr | 0.4 0.7 1.2 | 0 5 | judgement 2026
care.meadow.first-year | h/1,000 sf-yr | 15 30 45 | 0 1000 | judgement 2026
care.meadow.mature | h/1,000 sf-yr | 2 5 10 | 0 1000 | judgement 2026
care.meadow.decay | 1/yr | 0.4 0.8 1.2 | 0 5 | judgement 2026
care.path.first-year | h/1,000 sf-yr | 4 8 14 | 0 1000 | judgement 2026
care.path.mature | h/1,000 sf-yr | 4 8 14 | 0 1000 | judgement 2026
care.path.decay | 1/yr | 0 0 0 | 0 5 | judgement 2026
care.weed-set-back | years per unserved share | 0.5 1 2 | 0 5 | judgement 2026
care.level-a | share of full care | 1 1 1 | 0 1 | judgement 2026
care.level-b | share of full care | 0.65 0.75 0.85 | 0 1 | judgement 2026
care.level-c | share of full care | 0.4 0.5 0.6 | 0 1 | judgement 2026
season.summer | share | 0.35 0.45 0.55 | 0 1 | judgement 2026
season.fall | share | 0.15 0.22 0.3 | 0 1 | judgement 2026
season.winter | share | 0.02 0.08 0.12 | 0 1 | judgement 2026
season.spring | share | 0.18 0.25 0.35 | 0 1 | judgement 2026
season.annual-bed.summer | share | 0.45 0.55 0.65 | 0 1 | judgement 2026
season.annual-bed.fall | share | 0.15 0.2 0.3 | 0 1 | judgement 2026
season.annual-bed.winter | share | 0 0.02 0.05 | 0 1 | judgement 2026
season.annual-bed.spring | share | 0.15 0.23 0.3 | 0 1 | judgement 2026
harvest.vegetables | lb/h | 15 22 30 | 1 300 | judgement 2026
harvest.berries | lb/h | 5 7.5 10 | 0.5 100 | judgement 2026
harvest.wash-and-record | lb/h | 40 60 90 | 5 1000 | judgement 2026
renewal.mulch-inches | in | 1 2 3 | 0 12 | common practice 2026
renewal.mulch-years | yr | 2 2.5 3 | 0.5 20 | common practice 2026
renewal.edge-years | yr | 3 5 8 | 1 40 | common practice 2026
renewal.path-years | yr | 8 9 10 | 1 60 | common practice 2026
renewal.replant-years | yr | 10 11 12 | 1 60 | common practice 2026
renewal.replant-share | share of plants | 0.15 0.25 0.35 | 0 1 | common practice 2026
renewal.drip-years | yr | 8 9 10 | 1 40 | common practice 2026
labor.full-time-hours | h/yr | 2080 2080 2087 | 1 8784 | published 2011
labor.leave | share | 0.1 0.12 0.16 | 0 1 | common practice 2026
labor.meetings | share | 0.05 0.08 0.12 | 0 1 | common practice 2026
labor.weather | share | 0.02 0.05 0.1 | 0 1 | common practice 2026
labor.student-productivity | share | 0.6 0.65 0.8 | 0 1 | judgement 2026
labor.student-term-hours | h/wk | 6 8 20 | 0 20 | common practice 2026
labor.student-break-hours | h/wk | 20 30 40 | 0 40 | common practice 2026
labor.course-effectiveness | share | 0.3 0.35 0.5 | 0 1 | judgement 2026
labor.recruit-months | months | 2 3 4 | 0 24 | common practice 2026
labor.ramp-months | months | 2 3 6 | 0 24 | common practice 2026
labor.ramp-productivity | share | 0.4 0.6 0.8 | 0 1 | judgement 2026
labor.benefits | share of salary | 0.3 0.35 0.45 | 0 1 | common practice 2026
labor.equipment | $ once | 6000 9000 12000 | 0 100000 | common practice 2026
labor.attrition | share/yr | 0.08 0.11 0.15 | 0 1 | common practice 2026
labor.warn-at-use | share | 0.8 0.85 0.95 | 0 1 | judgement 2026
cost.soft | share | 0.08 0.115 0.15 | 0 1 | judgement 2026
cost.testing-and-locating | $ | 1000 3000 6000 | 0 100000 | judgement 2026
cost.contingency | share | 0.1 0.2 0.3 | 0 1 | judgement 2026
cost.class-5-low | share | -0.5 -0.3 -0.2 | -1 0 | published 2020
cost.class-5-high | share | 0.3 0.5 1 | 0 2 | published 2020
cost.escalation | share/yr | 0.03 0.04 0.05 | -0.1 0.3 | judgement 2026
cost.sheet-mulch-and-plant | $/sf | 4 6.5 9 | 0 200 | judgement 2026
cost.perennial | $/sf | 8 11.5 15 | 0 200 | judgement 2026
cost.rain-garden | $/sf | 10 25 40 | 0 200 | published 2026
cost.accessible-path | $/path sf | 12 18 25 | 0 200 | judgement 2026
cost.compost-delivered | $/cu yd | 30 42 55 | 0 500 | common practice 2026
cost.chips-delivered | $/cu yd | 0 15 35 | 0 500 | published 2026
cost.sign | $ | 300 900 2500 | 0 50000 | judgement 2026
cost.edging | $/ft | 2 5 12 | 0 200 | judgement 2026
cost.water-connection | $ | 500 2500 8000 | 0 200000 | judgement 2026
cost.care-hour | $/h | 25 39.1 55 | 0 500 | judgement 2026
money.gift-fee | share | 0 0.04 0.08 | 0 1 | common practice 2026
money.payout | share/yr | 0.04 0.045 0.045 | 0 0.2 | common practice 2026
money.prudent-payout | share/yr | 0.07 0.07 0.07 | 0 1 | published 2006
money.real-discount | share/yr | 0.03 0.03 0.05 | -0.05 0.2 | published 2026
money.payback-years | yr | 5 7 10 | 1 50 | judgement 2026
mowing.cuts | cuts/yr | 20 26 32 | 0 100 | common practice 2026
mowing.hours-per-cut | h/1,000 sf | 0.02 0.035 0.06 | 0 5 | common practice 2026
mowing.fuel | gal/h | 0.5 0.8 1.5 | 0 20 | judgement 2026
mowing.carbon | kg CO2/gal | 8.5 8.89 8.9 | 0 12 | published 2026
compost.meal-waste | lb/meal | 0.1 0.25 0.5 | 0 5 | common practice 2026
compost.capture | share | 0.4 0.6 0.8 | 0 1 | judgement 2026
compost.bulking | t/t captured | 0.5 1 2 | 0 10 | common practice 2026
compost.mass-yield | share | 0.4 0.45 0.55 | 0 1 | common practice 2026
compost.share-to-program | share | 0.5 0.7 1 | 0 1 | judgement 2026
compost.maturity-months | months | 3 6 9 | 1 36 | common practice 2026
compost.top-dress-inches | in | 0.25 0.5 1 | 0 6 | common practice 2026
compost.heat | °F | 131 131 131 | 100 180 | published 1993
compost.windrow-days | days | 15 15 15 | 1 100 | published 1993
compost.windrow-turnings | turnings | 5 5 5 | 1 50 | published 1993
compost.vessel-days | days | 3 3 3 | 1 100 | published 1993
compost.bioassay-days | days | 21 21 28 | 7 90 | common practice 2026
water.roof-runoff | share | 0.8 0.9 0.95 | 0 1 | published 2026
water.effective-rain | share | 0.5 0.7 0.9 | 0 1 | common practice 2026
water.plant-factor.annual-bed | share of reference | 0.7 0.8 1.05 | 0 1.5 | published 2017
water.plant-factor.perennial-bed | share of reference | 0.3 0.5 0.7 | 0 1.5 | published 2017
water.plant-factor.woody | share of reference | 0.4 0.5 0.7 | 0 1.5 | published 2017
water.plant-factor.rain-garden | share of reference | 0.3 0.5 0.7 | 0 1.5 | published 2017
water.plant-factor.meadow | share of reference | 0.2 0.3 0.5 | 0 1.5 | published 2017
water.application-efficiency | share | 0.6 0.8 0.9 | 0.1 1 | common practice 2026
yield.annual-bed | lb/sf | 0.3 0.45 0.6 | 0 3 | published 2016
yield.annual-bed-first-seasons | lb/sf | 0.2 0.3 0.45 | 0 3 | common practice 2026
yield.woody | lb/sf | 0.133 0.167 0.2 | 0 3 | published 2026
yield.losses | share | 0.1 0.175 0.25 | 0 1 | judgement 2026
yield.meal | lb/meal | 0.2 0.25 0.4 | 0.05 2 | common practice 2026
gate.lead-screening | mg/kg | 100 200 200 | 10 1000 | published 2025
gate.lead-stop | mg/kg | 400 600 600 | 10 5000 | published 2025
gate.soil-test-years | yr | 3 3 5 | 1 10 | common practice 2026
gate.root-radius | ft/in | 1 1 1.5 | 0.5 3 | published 2026
gate.root-share | share | 0.1 0.25 0.5 | 0 1 | judgement 2026
gate.slope | % | 8 12 20 | 0 100 | judgement 2026
gate.truck-width | ft | 9 10 12 | 5 30 | common practice 2026
gate.route-width | in | 36 36 60 | 36 144 | published 2010
gate.route-passing-width | in | 60 60 60 | 60 144 | published 2010
gate.route-passing-every | ft | 200 200 200 | 1 200 | published 2010
gate.route-running-slope | % | 5 5 5 | 0 5 | published 2010
gate.route-cross-slope | % | 2.083 2.083 2.083 | 0 2.084 | published 2010
gate.conflict-overlap | share | 0.01 0.02 0.05 | 0 1 | judgement 2026
gate.locate-days | business days | 2 3 3 | 1 30 | published 2026
gate.tolerance | in | 18 24 24 | 6 60 | published 2026
gate.root-growth-limit | psi | 250 300 350 | 50 1000 | published 2026
bed-share | share | 0.25 0.29 0.4 | 0 1 | common practice 2026`;

/** The same of what makes a place suitable: criterion | unit | weight | breakpoints. */
export const LOCKED_CRITERIA = `
visibility | people/day | 20 | 0 0, 500 0.3, 2000 0.8, 4000 1
sun | h/day | 20 | 3 0, 6 0.7, 8 1
kitchen | ft | 15 | 200 1, 1000 0.5, 2500 0
water | ft | 15 | 50 1, 200 0.5, 600 0
soil | % | 10 | 1 0, 3 0.6, 5 1
truck | yes/no | 10 | 0 0, 1 1
zone | sites | 10 | 0 1, 2 0.3, 4 0`;
