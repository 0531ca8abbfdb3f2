using CsCheck;
using Emberwright.Stove.Fire;
using Xunit;

namespace Emberwright.Stove.Tests.Fire;

public class StoichiometryTests
{
    /// <summary>Dry pellet-like analyses, moistures and air humidities.</summary>
    internal static readonly Gen<Stoichiometry> Any =
        from c in Gen.Double[44, 56]
        from h in Gen.Double[4.5, 7]
        from n in Gen.Double[0, 2]
        from s in Gen.Double[0, 0.3]
        from ash in Gen.Double[0, 8]
        where 100 - c - h - n - s - ash < 49.9
        from w in Gen.Double[0, 0.5]
        from x in Gen.Double[0, 0.02]
        select new Stoichiometry(new Fuel("any", UltimateAnalysis.ByDifference(c, h, n, s, ash), w), new CombustionAir(x));

    internal static readonly Gen<double> AnyAirRatio = Gen.Double[1, 12];

    [Fact]
    public void Mass_in_is_mass_out() => Gen.Select(Any, AnyAirRatio, Gen.Double[0, 0.02]).Sample((s, ratio, co) =>
    {
        var mass = s.FlueGasAt(ratio, co).MassKgPerKg;

        Assert.Equal(1 - s.Fuel.AshAsFired + ratio * s.AirKgPerKg, mass, 1e-9 * mass);
    });

    [Fact]
    public void Oxygen_in_is_oxygen_out() => Gen.Select(Any, AnyAirRatio, Gen.Double[0, 0.02]).Sample((s, ratio, co) =>
    {
        static double Atoms(GasMix mix) =>
            2 * mix.CarbonDioxide + mix.Water + 2 * mix.SulfurDioxide + 2 * mix.Oxygen + mix.CarbonMonoxide;
        var fuel = (1 - s.Fuel.Moisture) * s.Fuel.Dry.Oxygen / MolarMass.OxygenAtom + s.Fuel.Moisture / MolarMass.Water;

        Assert.Equal(fuel + Atoms(ratio * s.StoichiometricAir), Atoms(s.FlueGasAt(ratio, co).PerKgFuel), 1e-9 * 500);
    });

    [Fact]
    public void Carbon_monoxide_comes_out_at_the_share_asked_for() =>
        Gen.Select(Any, AnyAirRatio, Gen.Double[0, 0.05]).Sample((s, ratio, co) =>
            Assert.Equal(co, s.FlueGasAt(ratio, co).CarbonMonoxideDry, 1e-12));

    [Fact]
    public void Air_ratio_from_oxygen_round_trips() => Gen.Select(Any, AnyAirRatio, Gen.Double[0, 0.01]).Sample((s, ratio, co) =>
    {
        var gas = s.FlueGasAt(ratio, co);
        var coWet = gas.PerKgFuel.WetShare(Gas.CarbonMonoxide);

        Assert.Equal(ratio, AirRatio.FromOxygen(s, gas.OxygenDry, Basis.Dry, co), 1e-9 * ratio);
        Assert.Equal(ratio, AirRatio.FromOxygen(s, gas.OxygenWet, Basis.Wet, coWet), 1e-9 * ratio);
    });

    [Fact]
    public void Air_ratio_from_carbon_dioxide_round_trips() => Gen.Select(Any, AnyAirRatio, Gen.Double[0, 0.01]).Sample((s, ratio, co) =>
    {
        var gas = s.FlueGasAt(ratio, co);
        var coWet = gas.PerKgFuel.WetShare(Gas.CarbonMonoxide);

        Assert.Equal(ratio, AirRatio.FromCarbonDioxide(s, gas.CarbonDioxideDry, Basis.Dry, co), 1e-8 * ratio);
        Assert.Equal(ratio, AirRatio.FromCarbonDioxide(s, gas.CarbonDioxideWet, Basis.Wet, coWet), 1e-8 * ratio);
    });

    [Fact]
    public void Wet_and_dry_are_never_the_same() => Gen.Select(Any, Gen.Double[1.1, 8]).Sample((s, ratio) =>
    {
        var gas = s.FlueGasAt(ratio);

        Assert.True(gas.OxygenWet < gas.OxygenDry);
        Assert.True(gas.CarbonDioxideWet < gas.CarbonDioxideDry);
        Assert.True(AirRatio.FromOxygen(s, gas.OxygenDry, Basis.Wet) > ratio);
        Assert.Equal(gas.OxygenDry * (1 - gas.WaterWet), gas.OxygenWet, 1e-12);
    });

    [Fact]
    public void More_air_means_more_oxygen_and_less_carbon_dioxide() =>
        Gen.Select(Any, AnyAirRatio, Gen.Double[0.01, 1]).Sample((s, ratio, more) =>
        {
            var lean = s.FlueGasAt(ratio + more);
            var rich = s.FlueGasAt(ratio);

            Assert.True(lean.OxygenDry > rich.OxygenDry);
            Assert.True(lean.CarbonDioxideDry < rich.CarbonDioxideDry);
            Assert.True(rich.CarbonDioxideDry <= s.CarbonDioxideMax * (1 + 1e-12));
        });

    [Fact]
    public void More_moisture_means_more_water_and_less_air() =>
        Gen.Select(Any, Gen.Double[0.01, 0.1]).Sample((s, more) =>
        {
            var wetter = new Stoichiometry(s.Fuel.WithMoisture(s.Fuel.Moisture + more), s.Air);

            Assert.True(wetter.AirKgPerKg < s.AirKgPerKg);
            Assert.True(wetter.FlueGasAt(2).WaterWet > s.FlueGasAt(2).WaterWet);
            Assert.Equal(s.CarbonDioxideMax, wetter.CarbonDioxideMax, 1e-12);
        });

    [Fact]
    public void Loop_functions_agree_with_the_flue_gas_and_their_slopes_with_differences() =>
        Gen.Select(Any, Gen.Double[1.01, 10], Gen.Double[250, 1900]).Sample((s, ratio, kelvin) =>
        {
            const double d = 1e-5;
            var gas = s.FlueGasAt(ratio);

            Assert.Equal(gas.OxygenDry, s.OxygenDry(ratio, out var dOxygen), 1e-12);
            Assert.Equal((s.OxygenDry(ratio + d, out _) - s.OxygenDry(ratio - d, out _)) / (2 * d), dOxygen, 1e-7);
            Assert.Equal(gas.MolarMassKgPerMol, s.FlueMolarMass(ratio, out var dMass), 1e-12);
            Assert.Equal((s.FlueMolarMass(ratio + d, out _) - s.FlueMolarMass(ratio - d, out _)) / (2 * d), dMass, 1e-8);

            var heat = s.FlueHeat(ratio, kelvin, out var dT, out var dRatio);
            Assert.Equal(new HeatContent(gas.PerKgFuel).At(kelvin), heat, 1e-3);
            Assert.Equal((s.FlueHeat(ratio, kelvin + 0.01, out _, out _) - s.FlueHeat(ratio, kelvin - 0.01, out _, out _)) / 0.02, dT, 1e-3 * dT);
            Assert.Equal((s.FlueHeat(ratio + d, kelvin, out _, out _) - s.FlueHeat(ratio - d, kelvin, out _, out _)) / (2 * d), dRatio, 1 + 1e-5 * Math.Abs(dRatio));
            Assert.Equal(dT / gas.MassKgPerKg, s.FlueHeatCapacityJPerKgK(ratio, kelvin), 1e-9 * dT);
        });

    [Fact]
    public void Air_holds_the_humidity_asked_for() => Gen.Double[0, 0.1].Sample(humidity =>
    {
        var air = new CombustionAir(humidity);
        var water = air.Kilogram.Water * MolarMass.Water;

        Assert.Equal(1, air.Kilogram.MassKg, 1e-12);
        Assert.Equal(humidity, water / (1 - water), 1e-12);
        Assert.Equal(287.05, CombustionAir.Dry.GasConstantJPerKgK, 0.05);
    });

    [Fact]
    public void Below_one_there_is_no_flue_gas()
    {
        var s = new Stoichiometry(new Fuel("any", UltimateAnalysis.ByDifference(50, 6, 0, 0, 0.5), 0.08));

        Assert.Contains("air ratio", Assert.Throws<InputException>(() => s.FlueGasAt(0.99)).Message, StringComparison.Ordinal);
        Assert.Equal(0, s.OxygenDry(0.9, out var slope));
        Assert.Equal(0, slope);
    }
}
