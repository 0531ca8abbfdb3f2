using BenchmarkDotNet.Attributes;
using Emberwright.Stove;
using Emberwright.Stove.Air;
using Emberwright.Stove.Patterns;
using MathNet.Numerics.RootFinding;

namespace Emberwright.Bench;

/// <summary>
/// What a solve costs: cold, coupled with a fire, with all slopes, and warm; beside it MathNet's Broyden on the very same
/// scaled equations, from the same start after the same flow and heat sweeps, as the named baseline.
/// Run: dotnet run -c Release --project bench/Emberwright.Bench -- --filter *StoveSolve*
/// </summary>
[MemoryDiagnoser]
public class StoveSolve
{
    private readonly VirtualStove stove = new(DamperInsert.Pattern, null, new Site());
    private readonly StoveModel model = new(DamperInsert.Pattern, null, new Site(), new double[ParameterSlopes.Parameters]);
    private readonly double[] nominal = new double[ParameterSlopes.Parameters];
    private readonly double[] fouled = new double[ParameterSlopes.Parameters];
    private readonly double[] gradient = new double[ParameterSlopes.Parameters];
    private StoveSolution near = null!;
    private Scenario scenario = null!;
    private UnknownLayout layout;
    private double[] start = [];

    [GlobalSetup]
    public void Setup()
    {
        fouled[(int)Parameter.AshPassages] = -0.2;
        fouled[(int)Parameter.Vent] = -0.1;
        near = stove.Solve(nominal, Condition.HighBurn);
        scenario = model.Scenario(fouled, Condition.HighBurn);
        layout = model.Layout(scenario);
        start = CoupledSolver.RoughStart(scenario, layout);
    }

    [Benchmark]
    public double Cold() => stove.Solve(nominal, Condition.FanOnly).TotalPressurePa("firebox");

    [Benchmark(Baseline = true)]
    public double Coupled() => stove.Solve(fouled, Condition.HighBurn).TotalPressurePa("firebox");

    [Benchmark]
    public double CoupledWarm() => stove.Solve(fouled, Condition.HighBurn, near).TotalPressurePa("firebox");

    [Benchmark]
    public double CoupledWithAllSlopes()
    {
        stove.Solve(fouled, Condition.HighBurn).Sensitivity(Measure.Pressure, Places.Firebox, gradient);
        return gradient[0];
    }

    [Benchmark]
    public double BroydenOnTheSameEquations()
    {
        var root = Broyden.FindRoot(Residual, start, 1e-8, 300, 1e-6);
        return root[layout.P(1)];
    }

    /// <summary>Broyden from the start this solver begins with, before its sweeps; the firebox's pressure, or NaN when it finds no root.</summary>
    public double BroydenFromTheColdStart()
    {
        try
        {
            return Broyden.FindRoot(Residual, CoupledSolver.ColdStart(scenario, layout), 1e-8, 1000, 1e-6)[layout.P(1)] * Scaling.Column(layout, layout.P(1));
        }
        catch (MathNet.Numerics.NonConvergenceException)
        {
            return double.NaN;
        }
    }

    /// <summary>This solver's Newton steps from the start Broyden gets.</summary>
    public double CoupledFromTheSameStart()
    {
        Span<double> z = stackalloc double[layout.Count];
        for (var k = 0; k < z.Length; k++)
            z[k] = start[k] * Scaling.Column(layout, k);
        var trace = CoupledSolver.Solve(scenario, layout, z, warm: true);
        return trace.Converged ? z[layout.P(1)] : double.NaN;
    }

    private double[] Residual(double[] scaled)
    {
        var n = layout.Count;
        Span<double> z = stackalloc double[n];
        for (var k = 0; k < n; k++)
            z[k] = scaled[k] * Scaling.Column(layout, k);
        Span<LinkPoint> points = stackalloc LinkPoint[layout.Links];
        var residual = new double[n];
        CoupledEquations.Assemble(scenario, layout, z, points, residual, []);
        for (var i = 0; i < n; i++)
            residual[i] *= Scaling.Row(layout, i);
        return residual;
    }
}
