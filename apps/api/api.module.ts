import { Module, type DynamicModule } from '@nestjs/common';
import { CampusesController } from './campuses/campuses.controller.js';
import { DecisionsController } from './decisions/decisions.controller.js';
import { ExplanationsController } from './explanations/explanations.controller.js';
import { DefaultsController } from './defaults/defaults.controller.js';
import { DocumentsController } from './documents/documents.controller.js';
import { EstimatesController } from './estimates/estimates.controller.js';
import { SuitabilityController } from './estimates/suitability.controller.js';
import { ExportsController } from './exports/exports.controller.js';
import { HealthController } from './health/health.controller.js';
import { ImportsController } from './imports/imports.controller.js';
import { PlansController } from './plans/plans.controller.js';
import { PORTS, type ApiPorts } from './ports.js';
import { SitesController } from './sites/sites.controller.js';
import { SolvesController } from './solves/solves.controller.js';

@Module({})
export class ApiModule {
  static over(ports: ApiPorts): DynamicModule {
    return {
      module: ApiModule,
      controllers: [
        CampusesController,
        DecisionsController,
        ExplanationsController,
        DefaultsController,
        DocumentsController,
        EstimatesController,
        ExportsController,
        HealthController,
        ImportsController,
        PlansController,
        SitesController,
        SolvesController,
        SuitabilityController,
      ],
      providers: [{ provide: PORTS, useValue: ports }],
    };
  }
}
