using System.Collections.Immutable;
using Emberwright.Reports.FromWiring;
using Emberwright.Reports.Pictures.Wiring;
using Emberwright.Stove;
using Emberwright.Stove.Controls;
using Emberwright.Visits;
using Emberwright.Visits.Journal;

namespace Emberwright.Reports.FromVisit;

/// <summary>The wiring pictures of a visit: the circuits on which something was read, with what should have stood there.</summary>
public static class VisitWiring
{
    private const int Most = 2;

    /// <summary>What was read on the wiring in a state of the controls, the latest of each place.</summary>
    /// <param name="visit">The visit.</param>
    /// <param name="operation">The state.</param>
    public static IReadOnlyDictionary<(Measure Measure, string Place), double> ReadIn(Visit visit, Operation operation)
    {
        ArgumentNullException.ThrowIfNull(visit);
        return visit.Readings.Where(r => IsElectrical(r.Body) && OperationOf(r.Body) == operation)
            .GroupBy(r => (r.Body.Measure, r.Body.Place)).ToDictionary(g => g.Key, g => g.Last().Body.Si);
    }

    /// <summary>The circuits on which something was read, with the state of the controls.</summary>
    /// <param name="visit">The visit.</param>
    /// <param name="wiring">Its stove's circuit.</param>
    public static IReadOnlyList<(LoadPath Path, Operation Operation)> ReadOn(Visit visit, Wiring wiring)
    {
        ArgumentNullException.ThrowIfNull(visit);
        return [.. Circuits(visit, wiring).Select(c => (c.Path, c.Operation)).DistinctBy(c => (c.Path.Load.Id, c.Operation)).Take(Most)];
    }

    /// <summary>The pictures' inputs, the circuit with most readings first; none when nothing was read on the wiring.</summary>
    /// <param name="visit">The visit.</param>
    public static ImmutableArray<WiringInput> Of(Visit visit)
    {
        ArgumentNullException.ThrowIfNull(visit);
        if (Findings.WiringOf(visit) is not { } wiring) return [];
        var made = ImmutableArray.CreateBuilder<WiringInput>();
        foreach (var (path, operation, readings) in Circuits(visit, wiring).Take(Most))
            made.Add(new CircuitPicture(path, operation) { Readings = readings, Expecting = visit.Seal is null }.Input($"wiring-{made.Count + 1}"));
        return made.ToImmutable();
    }

    // The circuit and state in which most was read first; what it shows is not shown again by another that shares its head.
    private static IEnumerable<(LoadPath Path, Operation Operation, Dictionary<(Measure, string), double> Readings)> Circuits(Visit visit, Wiring wiring)
    {
        var left = visit.Readings
            .Where(r => IsElectrical(r.Body))
            .GroupBy(r => (Operation: OperationOf(r.Body), r.Phase))
            .Select(same => (same.Key.Operation, same.Key.Phase, Readings: same.GroupBy(r => (r.Body.Measure, r.Body.Place)).ToDictionary(g => g.Key, g => g.Last().Body.Si)))
            .ToList();
        foreach (var (operation, phase, readings) in left.OrderBy(g => g.Phase).ThenByDescending(g => g.Readings.Count))
        {
            var open = readings.Keys.ToHashSet();
            while (open.Count > 0)
            {
                var best = LoadPath.All(wiring).Select(path => (path, shown: Shown(path, open))).MaxBy(c => c.shown.Count);
                if (best.shown.Count == 0) break;
                yield return (best.path, operation, readings);
                open.ExceptWith(Shown(best.path, open));
            }
        }
    }

    private static bool IsElectrical(ReadingBody reading) =>
        reading.IsTestPoint && reading.Measure is Measure.Voltage or Measure.Current or Measure.Resistance or Measure.Capacitance;

    private static Operation OperationOf(ReadingBody reading) =>
        reading.Measure is Measure.Resistance or Measure.Capacitance ? Operation.Unplugged : Operations.Of(reading.Condition);

    private static HashSet<(Measure, string Place)> Shown(LoadPath path, IEnumerable<(Measure, string Place)> readings)
    {
        var places = path.Points.Concat(path.Parts.Select(p => p.Id)).ToHashSet();
        return [.. readings.Where(r => places.Contains(r.Place))];
    }
}
