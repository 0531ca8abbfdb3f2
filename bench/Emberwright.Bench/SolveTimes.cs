using System.Diagnostics;
using System.Globalization;
using Emberwright.Stove;
using Emberwright.Stove.Patterns;

namespace Emberwright.Bench;

/// <summary>
/// What a solve costs as the least mean of many short batches: on a busy machine the least is what the program itself needs,
/// since every disturbance only adds. The page that measures in a browser compiles this file too.
/// </summary>
internal static class SolveTimes
{
    private const int Batches = 300;
    private const double LeastBatchMs = 2;

    /// <summary>Microseconds of one call.</summary>
    public static double BestUs(Action call)
    {
        var clock = Stopwatch.StartNew();
        var calls = 0;
        while (clock.ElapsedMilliseconds < 1500)
        {
            call();
            calls++;
        }

        var batch = Math.Max(1, (int)(calls / (double)clock.ElapsedMilliseconds * LeastBatchMs));
        var best = double.PositiveInfinity;
        for (var b = 0; b < Batches; b++)
        {
            clock.Restart();
            for (var i = 0; i < batch; i++)
            {
                call();
            }

            best = Math.Min(best, clock.Elapsed.TotalMicroseconds / batch);
        }

        return best;
    }

    /// <summary>The stove's own operations by name.</summary>
    public static IReadOnlyList<(string Name, Action Call)> Operations()
    {
        var stove = new VirtualStove(DamperInsert.Pattern, null, new Site());
        var nominal = new double[Enum.GetValues<Parameter>().Length];
        var fouled = (double[])nominal.Clone();
        fouled[(int)Parameter.AshPassages] = -0.2;
        fouled[(int)Parameter.Vent] = -0.1;
        var gradient = new double[nominal.Length];
        var near = stove.Solve(nominal, Condition.HighBurn);
        var sealedStove = new VirtualStove(SealedCombustion.Pattern, null, new Site());
        return
        [
            ("cold, air only", () => stove.Solve(nominal, Condition.FanOnly)),
            ("coupled, high burn", () => stove.Solve(fouled, Condition.HighBurn)),
            ("coupled, warm start", () => stove.Solve(fouled, Condition.HighBurn, near)),
            ("coupled with all sensitivities", () => stove.Solve(fouled, Condition.HighBurn).Sensitivity(Measure.Pressure, Places.Firebox, gradient)),
            ("coupled, pressure-controlled blower", () => sealedStove.Solve(fouled, Condition.HighBurn)),
        ];
    }

    /// <summary>One Markdown row: operation, µs, ratio to the coupled solve.</summary>
    public static string Row(string name, double us, double coupledUs) =>
        string.Create(CultureInfo.InvariantCulture, $"| {name} | {us:0.0} | {us / coupledUs:0.00} |");
}
