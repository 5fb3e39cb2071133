export const usage = `Lampkeeper asks about your home in plain words and ends with a plan for power cuts.

  lampkeeper                         start the interview; where homes are begun in this folder, choose one
  lampkeeper kim                     go on with the home in kim.home.yaml
  lampkeeper plan kim.home.yaml      print the plan of a home
  lampkeeper plan kim.home.yaml --out papers
                                     write its papers into a folder
  lampkeeper plan kim.home.yaml --tariff rate.yaml
                                     with your own tariff, kept in the home file
  lampkeeper check kim.home.yaml     say what is wrong in a home or tariff file, line by line
  lampkeeper schema home             the form of a file, for editors (or: plan, tariff)
  lampkeeper calc                    list the single computations
  lampkeeper calc pump-power gpm=10 head=275

Options
  --short          interview: only the questions that matter most, for a short consult
  --change         interview: the list of answers at once, to change some and write the plan again
  --plain          interview: line by line, for screen readers and plain terminals
  --no-color       no color (also: NO_COLOR, TERM=dumb)
  --as-of DATE     count ages of figures from this day (YYYY-MM-DD)
  --out DIR        plan: write the papers there, NAME.plan.html to print
  --tariff FILE    interview, plan, calc: your own tariff (its form: lampkeeper schema tariff)
  --in FILE        calc: read inputs from a YAML or JSON file
  --json           plan, calc: print data instead of words
  --force          plan: replace a plan file that somebody changed
  --private        check: write a copy without who lives there, where, and money
  --help           this page
  --version        the version

It uses no network and sends nothing anywhere. Answers stay in the files it names.
Exit: 0 done, 1 failed, 2 called the wrong way, 130 interrupted.
`;
