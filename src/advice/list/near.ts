/** So many outages in a hundred, or so much of the job, are not worth the next larger thing. Our judgement. */
export const NEAR = 5;
