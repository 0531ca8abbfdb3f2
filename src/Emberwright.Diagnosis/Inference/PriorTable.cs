// Question:    what is known of a stove's continuous quantities before anything is read on it?
// Equations:   passages: ln G = b − x, b ~ N(0, s_b²), x ~ Exp(τ), τ = max(0.07, rate × tonnes since cleaning);
//              exchanger: ln UA = a − κ·x_exchanger, κ = 0.6; everything else normal.
// Symbols:     b clean baseline, ln; x fouling, −ln of the share left; τ its mean; s_b the pattern's or the card's width;
//              rates per metric tonne of fuel; wind and house in Pa; moisture as a fraction; offsets in Pa, % O2, K.
// Validity:    domestic pellet room heaters; 0 … 10 t since cleaning, beyond which τ stays at its value for 10 t.
// Assumptions: fouling grows in proportion to fuel burned; a thing just serviced keeps about 7 % of its passage shut.
// Source:      from memory and common practice, no source; chosen so that simulated stoves span the ranges technicians
//              see. Widths were checked by coverage on simulated stoves, not on real ones.
// Worked:      ash passages after 1.3 t: τ = 0.25 × 1.3 = 0.325, so P(less than 60 % open) = exp(−0.511/0.325) = 0.21.
using Emberwright.Stove;

namespace Emberwright.Diagnosis.Inference;

/// <summary>Prior means and widths of a stove's unknowns.</summary>
internal static class PriorTable
{
    /// <summary>Loss of ln UA per unit of exchanger restriction: a deposit that narrows also insulates.</summary>
    public const double InsulationPerRestriction = Stove.Faults.FoulingLimit.InsulationPerRestriction;

    /// <summary>Parameters that foul: their value is a baseline less a restriction.</summary>
    public static readonly Parameter[] Fouling =
    [
        Parameter.Intake, Parameter.BurnPot, Parameter.Exchanger, Parameter.AshPassages, Parameter.Vent, Parameter.Wheel, Parameter.RoomAir,
    ];

    /// <summary>Parameters that vary without fouling.</summary>
    public static readonly Parameter[] Free =
    [
        Parameter.DoorLeak, Parameter.AshDoorLeak, Parameter.LidLeak, Parameter.ExhaustLeak, Parameter.BlowerGasketLeak, Parameter.VentLeak,
        Parameter.Insulation, Parameter.Feed, Parameter.Moisture, Parameter.Wind, Parameter.House, Parameter.Supply,
        Parameter.BlowerSpeed, Parameter.SensedPressure, Parameter.SwitchThreshold, Parameter.SensorZero, Parameter.ProofSensor,
    ];

    /// <summary>Mean restriction just after servicing.</summary>
    public static double Serviced(Parameter parameter) => parameter == Parameter.RoomAir ? 0.05 : 0.07;

    /// <summary>Mean restriction in use, by the fuel burned since cleaning where that is known.</summary>
    public static double InUse(Parameter parameter, StoveCase stove) => InUse(parameter, stove.History, stove.Rates?.Fouling.GetValueOrDefault(parameter)?.Value);

    /// <summary>The same with a firm's own fouling per tonne, or null.</summary>
    public static double InUse(Parameter parameter, History history, double? perTonne = null)
    {
        var tonnes = history.TonnesSinceCleaning ?? history.MonthsSinceCleaning * TonnesPerMonth;
        if (tonnes is { } t) return Math.Max(Serviced(parameter), (perTonne ?? PerTonne(parameter)) * Math.Clamp(t, 0, 10));
        return parameter switch
        {
            Parameter.Wheel or Parameter.Intake => 0.10,
            Parameter.RoomAir => 0.15,
            _ => 0.22,
        };
    }

    /// <summary>
    /// Standard deviation of a parameter of the clean stove, from the card where it states healthy readings, else from
    /// the pattern; null when the parameter does not act on this pattern.
    /// </summary>
    public static double? PatternSd(Parameter parameter, StoveCase stove) => parameter switch
    {
        Parameter.SensedPressure => 0.02,
        Parameter.SwitchThreshold => 0.12,
        Parameter.SensorZero => 1,
        Parameter.ProofSensor => 4,
        Parameter.Wind when stove.Site.WindMPerS is not null => 1.2,
        Parameter.House when stove.Site.HousePa is not null => 0.5,
        Parameter.Supply when stove.Site.SupplyV is not null => 0.01,
        _ => stove.Pattern.Parameters.FirstOrDefault(b => b.Parameter == parameter) is { } baseline
            ? stove.Card is { Healthy.Count: > 0 } ? baseline.CardSd : baseline.PatternSd
            : null,
    };

    /// <summary>Prior mean of a parameter that does not foul.</summary>
    public static double Mean(Parameter parameter, Site site) => parameter switch
    {
        Parameter.Wind when site.WindMPerS is null => 0.5,
        Parameter.House when site.HousePa is null => -1,
        _ => 0,
    };

    /// <summary>Standard deviation of what the model is persistently off by at a place.</summary>
    public static double OffsetSd(Measure measure) => measure switch
    {
        Measure.Pressure => 1.2,
        Measure.Oxygen or Measure.CarbonDioxide => 0.5,
        Measure.Temperature => 10,
        _ => 0,
    };

    /// <summary>Relative error of the pressure gauge, standard deviation.</summary>
    public const double GaugeScaleSd = 0.02;

    /// <summary>What a year of use adds to the standard deviation of a persistent unknown.</summary>
    public static double GrowthSd(Unknown unknown) => unknown.Kind switch
    {
        UnknownKind.Baseline => 0.02,
        UnknownKind.Offset => unknown.Measure == Measure.Pressure ? 0.3 : 0.25 * OffsetSd(unknown.Measure!.Value),
        _ => unknown.Parameter switch
        {
            Parameter.Insulation => 0.1,
            Parameter.Feed => 0.07,
            Parameter.BlowerSpeed or Parameter.SensedPressure => 0.01,
            Parameter.SwitchThreshold => 0.05,
            Parameter.SensorZero => 0.5,
            Parameter.ProofSensor => 2,
            _ => 0.3,
        },
    };

    private const double TonnesPerMonth = 0.08;

    /// <summary>Where the fouling per tonne comes from.</summary>
    public const string FoulingOrigin = "from memory and common practice, no source";

    /// <summary>Mean fouling per tonne of fuel burned, −ln of the share left open.</summary>
    public static double PerTonne(Parameter parameter) => parameter switch
    {
        Parameter.AshPassages => 0.25,
        Parameter.Wheel => 0.05,
        Parameter.Intake => 0.02,
        Parameter.RoomAir => 0.15,
        _ => 0.1,
    };
}
