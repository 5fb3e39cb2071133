import { askedOfElectrician } from './asked-of-electrician';
import { familyWords } from './family-words';
import { fileWords } from './file-words';
import { fridgeWords, readingWords } from './fridge-words';
import { handStepWords } from './hand-step-words';
import { healthWords } from './health-words';
import { htmlWords } from './html-words';
import { nightLeaving, nightRooms } from './night-leaving';
import { nightWords } from './night-words';
import { deviceWords, pictureWords } from './picture-words';
import { quoteWords } from './quote-words';
import * as shared from './sheet-words';
import { yearTaskWords } from './year-task-words';
import { yearWords } from './year-words';

/** Words of the sheets and of the pictures on them. */
export const sheets = {
  fridge: fridgeWords,
  reading: readingWords,
  handSteps: handStepWords,
  night: nightWords,
  nightLeaving,
  nightRooms,
  family: familyWords,
  quote: quoteWords,
  askedOfElectrician,
  file: fileWords,
  health: healthWords,
  year: yearWords,
  yearTasks: yearTaskWords,
  pictures: pictureWords,
  devices: deviceWords,
  html: htmlWords,
  shared,
};
