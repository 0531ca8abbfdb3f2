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

BenchmarkSwitcher.FromAssembly(typeof(StoveSolve).Assembly).Run(args);
