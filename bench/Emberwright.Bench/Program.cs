using System.Globalization;
using BenchmarkDotNet.Running;
using Emberwright.Bench;

// burn-odds PATTERN DRAWS > rows; everything else is BenchmarkDotNet's.
if (args is ["burn-odds", var pattern, var draws])
{
    BurnOddsRows.Write(pattern, int.Parse(draws, CultureInfo.InvariantCulture), seed: 1, Console.Out.WriteLine);
    return;
}

BenchmarkSwitcher.FromAssembly(typeof(StoveSolve).Assembly).Run(args);
