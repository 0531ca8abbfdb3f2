using Emberwright.Diagnosis;
using Emberwright.Diagnosis.Inference;
using Emberwright.Stove;
using Emberwright.Stove.Patterns;
using Emberwright.Trials.Generator;

namespace Emberwright.Trials.Sampling;

/// <summary>Fifty stoves drawn from the model's own prior and read with scant or rich instruments.</summary>
internal static class FixedCases
{
    /// <summary>How many there are.</summary>
    public const int Count = 50;

    private static readonly string[] Ports = [Places.Firebox, Places.BlowerInlet, Places.Collar];

    private static readonly Observable[][] Rungs =
    [
        [.. Ports.Select(p => Pa(p, Condition.FanOnly))],
        [.. from state in new[] { Condition.FanOnly, Condition.DoorOpen, Condition.IntakeStopped, Condition.BlowerOff } from p in Ports select Pa(p, state)],
        [
            .. Ports.Select(p => Pa(p, Condition.HighBurn)),
            new(Measure.Oxygen, Places.Flue, Condition.HighBurn), new(Measure.Temperature, Places.Collar, Condition.HighBurn),
        ],
        [
            .. Ports.Select(p => Pa(p, Condition.HighBurn)), new(Measure.Oxygen, Places.Flue, Condition.HighBurn),
            new(Measure.Temperature, Places.Collar, Condition.HighBurn), Pa(Places.Firebox, Condition.FanOnly), Pa(Places.BlowerInlet, Condition.FanOnly),
            Pa(Places.Firebox, Condition.DoorOpen),
        ],
    ];

    /// <summary>The stove that a case is about.</summary>
    public static StoveCase Stove(string pattern, double outdoorC) =>
        new(PatternLibrary.All.First(p => p.Id == pattern), null, new Site(OutdoorC: outdoorC), new History());

    /// <summary>Draws a case's stove and reads it; its explanations are left empty.</summary>
    public static FixedCase Draw(int number)
    {
        var chance = Chance.Of("fixed-case", number);
        var pattern = PatternLibrary.All[number % PatternLibrary.All.Count];
        var outdoor = Math.Round(chance.Between(-10, 15));
        var stove = Stove(pattern.Id, outdoor);
        var open = OpenCase.Of(stove, []);
        var acting = Enumerable.Range(0, open.File.Discrete.Count).Where(f => open.File.Discrete[f].Shifts.Count > 0).ToArray();
        var fault = chance.Happens(0.25) ? -1 : acting[chance.Pick([.. acting.Select(f => open.File.Discrete[f].BaseRatePercent)])];
        var observables = Rungs[number / PatternLibrary.All.Count % Rungs.Length].Where(o => open.Knows(o)).ToArray();
        var layout = Layout.Of(stove, [new HashSet<Parameter>()], observables.Select(o => (o.Measure, o.Place)), serviced: false);
        if (fault >= 0)
            layout = layout.With([.. open.File.Discrete[fault].Shifts.Where(s => layout.Carrier(s.Parameter, 0) >= 0).Select(s => new FaultShift(s.Parameter, s.Mean, s.Sd, int.MaxValue))]);
        double[] unknowns = [.. layout.Unknowns.Select(u => u.IsExponential ? chance.Exponential(u.Sd) : chance.Normal(u.Mean, u.Sd))];
        return new(number, pattern.Id, outdoor, fault < 0 ? "" : open.File.Discrete[fault].Id, [.. Read(open, layout, unknowns, observables, chance)], [], 0);
    }

    /// <summary>The cold test at every port that a stove has: closed, door open, intake stopped, blower off.</summary>
    public static IReadOnlyList<Observable> ThreeStates(StoveCase stove)
    {
        var open = OpenCase.Of(stove, []);
        return [.. Rungs[1].Where(open.Knows)];
    }

    /// <summary>Draws a stove without a discrete fault from the prior and reads it.</summary>
    /// <returns>Its unknowns, the case opened on its readings, and the layout of the unknowns.</returns>
    public static (double[] Unknowns, OpenCase Open, Layout Layout) Sound(StoveCase stove, IReadOnlyList<Observable> observables, Chance chance)
    {
        var layout = Layout.Of(stove, [new HashSet<Parameter>()], observables.Select(o => (o.Measure, o.Place)), serviced: false);
        double[] unknowns = [.. layout.Unknowns.Select(u => u.IsExponential ? chance.Exponential(u.Sd) : chance.Normal(u.Mean, u.Sd))];
        var readings = Read(OpenCase.Of(stove, []), layout, unknowns, [.. observables], chance);
        return (unknowns, OpenCase.Of(stove, new FixedCase(0, stove.Pattern.Id, 0, "", [.. readings], [], 0).Evidence()), layout);
    }

    private static IEnumerable<FixedReading> Read(OpenCase open, Layout layout, double[] unknowns, Observable[] observables, Chance chance)
    {
        var problem = new Problem(new SolveCache(open.File.Model), layout, Prior.Of(layout), ReadingSet.Of([]), []);
        var row = new double[layout.Count];
        var exact = ReadingSet.Of(observables.Select((o, k) => new ReadingEvidence($"r{k:00}", 0, o, Exact(problem.Read(unknowns, 0, o, row), o.Measure))));
        var n = exact.Count;
        var covariance = new double[n * n];
        for (var i = 0; i < n; i++)
            for (var j = 0; j < n; j++) covariance[i * n + j] = exact.Covariance(i, j);
        var error = Cholesky.Factor(covariance, n)!.Spread([.. Enumerable.Range(0, n).Select(_ => chance.Normal())]);
        for (var i = 0; i < n; i++)
        {
            var ((measure, place, (fire, blower, opening)), value) = (exact.Items[i].Observable, exact.Items[i].Value);
            yield return new(measure, place, fire, blower, opening, Math.Round(value + error[i], measure == Measure.Pressure ? 1 : 2));
        }
    }

    private static double Exact(double read, Measure measure) => measure == Measure.CarbonMonoxide ? Math.Exp(read) : read;

    private static Observable Pa(string place, Condition condition) => new(Measure.Pressure, place, condition);
}
