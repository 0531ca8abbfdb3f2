using BenchmarkDotNet.Running;

BenchmarkSwitcher.FromAssembly(typeof(Emberwright.Bench.StoveSolve).Assembly).Run(args);
