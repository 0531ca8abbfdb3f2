using System.Globalization;
using BenchmarkDotNet.Running;
using Emberwright.Bench;

// burn-odds all|PATTERN DRAWS > rows; everything else is BenchmarkDotNet's.
if (args is ["burn-odds", var pattern, var draws])
{
    var count = int.Parse(draws, CultureInfo.InvariantCulture);
    if (pattern == "all") BurnOddsRows.WriteAll(count, Console.Out.WriteLine);
    else BurnOddsRows.Write(pattern, count, Console.Out.WriteLine);
    return;
}

// solves: the stove's own operations and MathNet's Broyden on the same equations, least of many batches, as Markdown rows.
if (args is ["solves"])
{
    var operations = SolveTimes.Operations().ToList();
    var broyden = new StoveSolve();
    broyden.Setup();
    operations.Add(("MathNet.Numerics Broyden, same equations and start", () => broyden.BroydenOnTheSameEquations()));
    operations.Add(("MathNet.Numerics Broyden, from the cold start", () => broyden.BroydenFromTheColdStart()));
    Console.WriteLine($"Firebox, Pa: this solver {broyden.Coupled():F6}, Broyden from the cold start {broyden.BroydenFromTheColdStart():F6}");
    operations.Add(("this solver from that start", () => broyden.CoupledFromTheSameStart()));
    var times = operations.Select(o => (o.Name, Us: SolveTimes.BestUs(o.Call))).ToList();
    times.ForEach(t => Console.WriteLine(SolveTimes.Row(t.Name, t.Us, times[1].Us)));
    return;
}

// report VISIT PHOTO…: the time to print it.
if (args is ["report", var visit, .. var photos])
{
    ReportPrint.Run(visit, photos);
    return;
}

BenchmarkSwitcher.FromAssembly(typeof(StoveSolve).Assembly).Run(args);
