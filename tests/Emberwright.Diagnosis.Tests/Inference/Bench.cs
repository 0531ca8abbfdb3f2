using Emberwright.Diagnosis.Inference;
using Emberwright.Stove;
using Emberwright.Stove.Patterns;
using MathNet.Numerics.Random;

namespace Emberwright.Diagnosis.Tests.Inference;

/// <summary>Stoves, readings and draws that several tests share.</summary>
internal static class Bench
{
    public static Catalogue Catalogue { get; } = Catalogue.For("damper-insert");

    public static StoveCase Case { get; } = new(DamperInsert.Pattern, null, new Site(OutdoorC: 0), new History());

    /// <summary>The usual cold test: three ports, closed, door open, intake stopped, blower off.</summary>
    public static IReadOnlyList<Observable> ColdTest { get; } =
    [
        .. from condition in new[] { Condition.FanOnly, Condition.DoorOpen, Condition.IntakeStopped, Condition.BlowerOff }
           from place in new[] { Places.Firebox, Places.BlowerInlet, Places.Collar }
           select new Observable(Measure.Pressure, place, condition),
    ];

    public static Observable Pressure(string place, Condition condition) => new(Measure.Pressure, place, condition);

    public static int Fault(CaseFile file, string id) => Enumerable.Range(0, file.Discrete.Count).First(f => file.Discrete[f].Id == id);

    public static (CaseFile File, ModeLibrary Library) Open(IStoveModel model, IReadOnlyList<Evidence> evidence, StoveCase? stove = null)
    {
        var file = CaseFile.Of(stove ?? Case, model, evidence, Catalogue);
        var layout = Layout.Of(stove ?? Case, file.Plan.Redrawn, file.Readings.Items.Select(r => (r.Observable.Measure, r.Observable.Place)), serviced: false);
        return (file, new ModeLibrary(file, layout, Prior.Of(layout)));
    }

    /// <summary>Draws the unknowns of a layout from their priors, exponentials included.</summary>
    public static double[] Draw(Layout layout, Xoshiro256StarStar random) =>
        [.. layout.Unknowns.Select(u => u.IsExponential ? -u.Sd * Math.Log(random.NextDouble()) : u.Mean + u.Sd * Normal.Quantile(Unit(random)))];

    /// <summary>Readings of a stove with these unknowns, scattered as Noise says.</summary>
    public static ReadingEvidence[] Read(IStoveModel model, Layout layout, double[] unknowns, IReadOnlyList<Observable> observables, Xoshiro256StarStar random)
    {
        var problem = new Problem(new SolveCache(model), layout, Prior.Of(layout), ReadingSet.Of([]), []);
        var row = new double[layout.Count];
        var exact = observables.Select((o, k) => new ReadingEvidence($"r{k:00}", 0, o, problem.Read(unknowns, 0, o, row))).ToArray();
        var set = ReadingSet.Of(exact);
        var n = set.Count;
        var covariance = new double[n * n];
        for (var i = 0; i < n; i++)
            for (var j = 0; j < n; j++) covariance[i * n + j] = set.Covariance(i, j);
        var error = Cholesky.Factor(covariance, n)!.Spread([.. Enumerable.Range(0, n).Select(_ => Normal.Quantile(Unit(random)))]);
        return [.. set.Items.Select((r, k) => r with { Value = r.Value + error[k] })];
    }

    public static double Unit(Xoshiro256StarStar random) => Math.Clamp(random.NextDouble(), 1e-12, 1 - 1e-12);
}
