using System.Collections.Immutable;
using Emberwright.Diagnosis;
using Emberwright.Reports.Pictures;
using Emberwright.Reports.Pictures.Profile;
using Emberwright.Reports.Wording;
using Emberwright.Stove;
using Emberwright.Stove.Patterns;
using Emberwright.Stove.Quantities;

namespace Emberwright.Reports.FromVisit;

/// <summary>Lays out the pressure profile of one condition from the healthy bands and today's readings.</summary>
public static class VisitProfile
{
    // Stations of the way when no pattern says more, each with its place among the parts below.
    private static (string Place, string Name, int After)[] Way =>
        [(Places.Firebox, Say.Of("common.firebox"), 2), (Places.BlowerInlet, Say.Of("common.blower-inlet"), 4), (Places.Collar, Say.Of("profile.collar"), 5)];

    private static string[] PartsOnTheWay => [Say.Of("profile.inlet"), Say.Of("profile.pot"), Say.Of("profile.exchanger"), Say.Of("profile.ash-passages"), Say.Of("profile.blower"), Say.Of("common.vent")];

    /// <summary>The picture's input; null when no port of the way has a band in this condition.</summary>
    /// <param name="condition">The condition shown.</param>
    /// <param name="bands">Healthy bands.</param>
    /// <param name="readings">Today's readings of that condition, newest last, in Pa by place.</param>
    /// <param name="moment">As found or as left.</param>
    /// <param name="last">Readings as left at the last visit, in Pa by place.</param>
    /// <param name="system">Units of the left axis.</param>
    /// <param name="vacuumSwitch">The vacuum switch, shown while the blower runs; null shows none.</param>
    /// <param name="pattern">The pattern, whose own ports are shown too; null shows the three that all patterns share.</param>
    /// <param name="predicted">What the leading suspect would bring about; none is drawn where none is given.</param>
    public static ProfileInput? Of(
        Condition condition, IReadOnlyList<Band> bands, IReadOnlyDictionary<string, double> readings, Moment moment,
        IReadOnlyDictionary<string, double> last, UnitSystem system, VacuumSwitch? vacuumSwitch = null, Pattern? pattern = null, IReadOnlyList<Predicted>? predicted = null)
    {
        var supposed = (predicted ?? []).Where(p => p.Condition == condition).GroupBy(p => p.Place).ToDictionary(same => same.Key, same => same.Last());
        var ports = Stations(pattern)
            .Select(port => (port.Place, port.Name, port.After, Band: bands.FirstOrDefault(b => b.Observable == new Observable(Measure.Pressure, port.Place, condition))))
            .Where(port => port.Band is not null)
            .ToArray();
        if (ports.Length == 0) return null;
        var pascal = system == UnitSystem.Si;
        return new ProfileInput
        {
            Id = moment == Moment.Found ? "profile-found" : "profile-left",
            Title = moment == Moment.Found ? Say.Of("profile.pressure-profile-as-found", ConditionWords.Of(condition)) : Say.Of("profile.pressure-profile-as-left", ConditionWords.Of(condition)),
            Stations =
            [
                .. ports.Select(port => new ProfileStation(port.Place, port.Name, new PressureBand(port.Band!.Low, Math.Clamp(port.Band.Expected, port.Band.Low, port.Band.High), port.Band.High))
                {
                    ShortName = port.Place switch { Places.Firebox => Say.Of("profile.fire"), Places.BlowerInlet => Say.Of("profile.blower"), Places.Collar => Say.Of("common.vent"), _ => null },
                    ReadingPa = readings.TryGetValue(port.Place, out var read) ? read : null,
                    LastPa = last.TryGetValue(port.Place, out var left) ? left : null,
                    PredictedPa = supposed.TryGetValue(port.Place, out var would) ? would.Pa : null,
                }),
            ],
            Parts = [.. Parts([.. ports.Select(port => port.After)])],
            PredictionCaption = supposed.Values.FirstOrDefault()?.Words,
            Moment = moment,
            Thresholds = vacuumSwitch is { } s && condition.Blower == BlowerState.On && ports.Any(port => port.Place == s.SensePort)
                ? [new ProfileThreshold(s.SensePort, -s.OpensPa, Say.Of("profile.vacuum-switch"))]
                : [],
            Unit = pascal ? PressureUnit.Pascal : PressureUnit.InchOfWater,
            SecondUnit = pascal ? PressureUnit.InchOfWater : PressureUnit.Pascal,
        };
    }

    // The pattern's ports in the order of the air; those it shares with all keep their usual names.
    private static IEnumerable<(string Place, string Name, int After)> Stations(Pattern? pattern)
    {
        if (pattern is null) return Way;
        return pattern.Ports
            .Select(port => Way.FirstOrDefault(w => w.Place == port.Id) is { Place: not null } shared ? shared : (port.Id, Say.Term(port.Name), NodeOrder(pattern, port.Node)))
            .Where(port => port.Item3 > 0).OrderBy(port => port.Item3);
    }

    private static int NodeOrder(Pattern pattern, string node)
    {
        for (var i = 0; i < Math.Min(pattern.Air.Nodes.Count, PartsOnTheWay.Length - 1); i++)
            if (pattern.Air.Nodes[i].Id == node) return i + 1;
        return 0;
    }

    // What lies between two ports; a port that this stove lacks joins its neighbours' parts.
    private static IEnumerable<string> Parts(ImmutableArray<int> ports)
    {
        var from = 0;
        foreach (var to in ports.Append(PartsOnTheWay.Length))
        {
            var parts = PartsOnTheWay[from..to];
            // The exchanger's passages are cleaned with the ash passages and count with them.
            yield return string.Join(", ", parts.Contains(Say.Of("profile.ash-passages")) ? parts.Where(p => p != Say.Of("profile.exchanger")) : parts);
            from = to;
        }
    }
}
