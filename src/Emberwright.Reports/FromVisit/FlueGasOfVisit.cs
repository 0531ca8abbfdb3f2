using Emberwright.Reports.Pages;
using Emberwright.Reports.Pictures;
using Emberwright.Reports.Wording;
using Emberwright.Stove;
using Emberwright.Stove.Fire;
using Emberwright.Visits;
using Emberwright.Visits.Journal;

namespace Emberwright.Reports.FromVisit;

/// <summary>One figure of the flue gas with its standard uncertainty; NaN where it was not measured.</summary>
/// <param name="Id">Id of the figure.</param>
/// <param name="Found">As found.</param>
/// <param name="FoundUncertainty">Its standard uncertainty.</param>
/// <param name="Left">As left.</param>
/// <param name="LeftUncertainty">Its standard uncertainty.</param>
public sealed record FlueFigure(string Id, double Found, double FoundUncertainty, double Left, double LeftUncertainty);

/// <summary>Flue gas and efficiency at high burn, before and after, from the readings of the visit.</summary>
public static class FlueGasOfVisit
{
    // What each figure is to the reader; the numbers are the engine's.
    private static (string Id, string Name, string Unit, int Decimals, string Meaning)[] Shown =>
    [
        ("oxygen-dry", Say.Of("flue.oxygen-left-dry"), "%", 1, Say.Of("flue.air-the-fire-did-not-use-much")),
        ("air-ratio", Say.Of("flue.air-ratio"), "", 2, Say.Of("flue.air-given-to-the-fire-as-a")),
        ("carbon-monoxide-dry", Say.Of("flue.carbon-monoxide"), "ppm", 0, Say.Of("flue.unburnt-gas-in-the-vent-not-in")),
        ("carbon-monoxide-13", Say.Of("flue.the-same-at-13-oxygen"), "ppm", 0, Say.Of("flue.made-comparable-between-stoves-and-days-by")),
        ("dew-point", Say.Of("flue.water-dew-point"), "°C", 0, Say.Of("flue.where-the-vents-wall-is-colder-than")),
        ("efficiency", Say.Of("flue.efficiency"), "%", 1, Say.Of("flue.share-of-the-fuels-heat-that-stays")),
    ];

    /// <summary>The figures; empty when no flue gas was measured at high burn.</summary>
    public static IReadOnlyList<FlueFigure> Of(Visit visit)
    {
        ArgumentNullException.ThrowIfNull(visit);
        var (found, left) = (Report(visit, Phase.AsFound), Report(visit, Phase.AsLeft));
        if (found is null && left is null) return [];
        return
        [
            .. Shown.Select(s => (s.Id, Found: found?.Find(s.Id), Left: left?.Find(s.Id))).Where(f => f.Found is not null || f.Left is not null)
                .Select(f => new FlueFigure(f.Id, f.Found?.Value ?? double.NaN, f.Found?.StandardUncertainty ?? double.NaN, f.Left?.Value ?? double.NaN, f.Left?.StandardUncertainty ?? double.NaN)),
        ];
    }

    /// <summary>The figures as the report prints them.</summary>
    /// <param name="figures">The figures.</param>
    /// <param name="us">True writes temperatures in °F.</param>
    internal static IEnumerable<FlueRow> Rows(IReadOnlyList<FlueFigure> figures, bool us) =>
        from f in figures
        join s in Shown on f.Id equals s.Id
        select new FlueRow(s.Name, Write(f.Found, f.FoundUncertainty, s.Unit, s.Decimals, us), Write(f.Left, f.LeftUncertainty, s.Unit, s.Decimals, us), s.Meaning);

    private static string Write(double value, double uncertainty, string unit, int decimals, bool us)
    {
        if (!double.IsFinite(value)) return "";
        if (unit == "°C" && us) (value, uncertainty, unit) = (value * 1.8 + 32, uncertainty * 1.8, "°F");
        var spread = uncertainty >= 0.5 * Math.Pow(10, -decimals) ? $" ± {Figures.Fixed(uncertainty, decimals)}" : "";
        return $"{Figures.Fixed(value, decimals)}{spread}{(unit.Length > 0 ? " " + unit : "")}";
    }

    private static FlueReport? Report(Visit visit, Phase phase)
    {
        double? Last(Measure measure, string place) => visit.Readings.LastOrDefault(r =>
            r.Phase == phase && r.Body.Measure == measure && r.Body.Place == place && r.Body.Condition.Fire == FireState.High && r.Body.Condition.Opening == OpeningState.Closed)?.Body.Si;

        var (oxygen, dioxide) = (Last(Measure.Oxygen, Places.Flue), Last(Measure.CarbonDioxide, Places.Flue));
        if (oxygen is null && dioxide is null || Last(Measure.Temperature, Places.Collar) is not { } flue) return null;
        var given = new FlueOptions();
        try
        {
            return FlueReport.Compute(given with
            {
                OxygenPercent = oxygen,
                CarbonDioxidePercent = oxygen is null ? dioxide : null,
                CarbonMonoxidePpm = Last(Measure.CarbonMonoxide, Places.Flue),
                FlueC = flue,
                RoomC = Last(Measure.Temperature, Places.Room) ?? visit.Site?.Room?.Si ?? given.RoomC,
                PressurePa = Stove.Air.Atmosphere.PressurePa(visit.Site?.Altitude?.Si ?? 0),
            });
        }
        catch (InputException)
        {
            // Readings that no fire gives have been refused or questioned where they were entered; nothing is computed from them.
            return null;
        }
    }
}
