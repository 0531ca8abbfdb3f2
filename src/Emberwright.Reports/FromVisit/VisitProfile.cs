using System.Collections.Immutable;
using Emberwright.Diagnosis;
using Emberwright.Reports.Pictures;
using Emberwright.Reports.Pictures.Profile;
using Emberwright.Stove;
using Emberwright.Stove.Patterns;
using Emberwright.Stove.Quantities;

namespace Emberwright.Reports.FromVisit;

/// <summary>Lays out the pressure profile of one condition from the healthy bands and today's readings.</summary>
public static class VisitProfile
{
    private static readonly (string Place, string Name)[] Way =
        [(Places.Firebox, "firebox"), (Places.BlowerInlet, "blower inlet"), (Places.Collar, "collar")];

    /// <summary>The picture's input; null when no port of the way has a band in this condition.</summary>
    /// <param name="condition">The condition shown.</param>
    /// <param name="bands">Healthy bands.</param>
    /// <param name="readings">Today's readings of that condition, newest last, in Pa by place.</param>
    /// <param name="moment">As found or as left.</param>
    /// <param name="last">Readings as left at the last visit, in Pa by place.</param>
    /// <param name="system">Units of the left axis.</param>
    /// <param name="vacuumSwitch">The vacuum switch, shown while the blower runs; null shows none.</param>
    public static ProfileInput? Of(
        Condition condition, IReadOnlyList<Band> bands, IReadOnlyDictionary<string, double> readings, Moment moment,
        IReadOnlyDictionary<string, double> last, UnitSystem system, VacuumSwitch? vacuumSwitch = null)
    {
        var ports = Way
            .Select(port => (port.Place, port.Name, Band: bands.FirstOrDefault(b => b.Observable == new Observable(Measure.Pressure, port.Place, condition))))
            .Where(port => port.Band is not null)
            .ToArray();
        if (ports.Length == 0) return null;
        var pascal = system == UnitSystem.Si;
        return new ProfileInput
        {
            Id = moment == Moment.Found ? "profile-found" : "profile-left",
            Title = $"Pressure profile, {(moment == Moment.Found ? "as found" : "as left")}, {ConditionText.Say(condition)}",
            Stations =
            [
                .. ports.Select(port => new ProfileStation(port.Place, port.Name, new PressureBand(port.Band!.Low, Math.Clamp(port.Band.Expected, port.Band.Low, port.Band.High), port.Band.High))
                {
                    ShortName = port.Place switch { Places.Firebox => "fire", Places.BlowerInlet => "blower", Places.Collar => "vent", _ => null },
                    ReadingPa = readings.TryGetValue(port.Place, out var read) ? read : null,
                    LastPa = last.TryGetValue(port.Place, out var left) ? left : null,
                }),
            ],
            Parts = [.. Parts([.. ports.Select(port => port.Place)])],
            Moment = moment,
            Thresholds = vacuumSwitch is { } s && condition.Blower == BlowerState.On && ports.Any(port => port.Place == s.SensePort)
                ? [new ProfileThreshold(s.SensePort, -s.OpensPa, "vacuum switch")]
                : [],
            Unit = pascal ? PressureUnit.Pascal : PressureUnit.InchOfWater,
            SecondUnit = pascal ? PressureUnit.InchOfWater : PressureUnit.Pascal,
        };
    }

    // What lies between two ports; a port that this stove lacks joins its neighbours' parts.
    private static IEnumerable<string> Parts(ImmutableArray<string> ports)
    {
        string[] parts = ["inlet, pot", "ash passages", "blower", "vent"];
        var from = 0;
        foreach (var port in ports)
        {
            var to = Array.FindIndex(Way, way => way.Place == port) + 1;
            yield return string.Join(", ", parts[from..to]);
            from = to;
        }
        yield return string.Join(", ", parts[from..]);
    }
}
