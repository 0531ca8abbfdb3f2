using Emberwright.Stove.Controls.Wirings;

namespace Emberwright.Stove.Controls.Sequence;

/// <summary>Runs the burn sequence of a virtual stove: its air, fire and heat drive its own board.</summary>
public static class BurnForecast
{
    /// <summary>Runs from cold.</summary>
    /// <param name="stove">The stove.</param>
    /// <param name="parameters">Its state of repair, indexed by <see cref="Parameter"/>.</param>
    /// <param name="scenario">What is wrong electrically or held open, and what is wanted.</param>
    /// <param name="durationS">Length of the run, s.</param>
    /// <exception cref="CircuitException">The pattern has no wiring, or a component is unknown.</exception>
    public static BurnRun Run(VirtualStove stove, ReadOnlySpan<double> parameters, BurnScenario scenario, double durationS)
    {
        var wiring = CardCircuit.Of(stove.Pattern, stove.Card);
        var thermocouple = wiring.Components.OfType<Thermocouple>().FirstOrDefault();
        var drivers = new LaggedDrivers(new VirtualSteadyStove(stove, parameters, thermocouple?.HighFireV), Lags(stove));
        return BurnSequence.Run(wiring, CardProgram.Of(stove.Pattern, stove.Card), drivers, With(scenario, parameters, wiring.Mains.NominalV), durationS);
    }

    private static SequenceLags Lags(VirtualStove stove)
    {
        var lags = stove.Pattern.Lags;
        return SequenceLags.Ordinary with
        {
            PotS = lags.BurnPotS,
            ExchangerS = lags.ExchangerS,
            ExhaustS = lags.ExhaustS,
            DiscS = lags.DiscS,
            WaterS = stove.Pattern.Heat.StreamIsWater ? 2 * lags.ExchangerS : double.PositiveInfinity,
        };
    }

    private static BurnScenario With(BurnScenario scenario, ReadOnlySpan<double> parameters, double nominalV)
    {
        var ratios = scenario.SettingRatios;
        var threshold = parameters[(int)Parameter.SwitchThreshold];
        if (threshold != 0) ratios = ratios.SetItem(ComponentIds.VacuumSwitch, Math.Exp(threshold));
        return scenario with
        {
            HoseShare = scenario.HoseShare * Math.Exp(parameters[(int)Parameter.SensedPressure]),
            SettingRatios = ratios,
            SensorZeroPa = scenario.SensorZeroPa + parameters[(int)Parameter.SensorZero],
            ProofOffsetK = scenario.ProofOffsetK + parameters[(int)Parameter.ProofSensor],
            FuelArrives = scenario.FuelArrives * Math.Exp(parameters[(int)Parameter.Feed]),
            SupplyV = scenario.SupplyV ?? nominalV * Math.Exp(parameters[(int)Parameter.Supply]),
        };
    }
}
