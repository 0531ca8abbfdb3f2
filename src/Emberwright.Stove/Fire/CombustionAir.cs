// Question: what does combustion air bring along?
// Composition of dry air: O2 20.946 %, N2 78.084 %, Ar 0.934 %, CO2 0.036 % by volume.
// Humidity: x = 0.622·p_v/(p − p_v) kg of water vapour per kg of dry air.
// Validity: x 0 … 0.1 kg/kg; carbon dioxide of a lived-in room (0.06 … 0.15 %) changes no figure here visibly.
// Source: CRC Handbook of Chemistry and Physics, dry air at sea level (from memory; the four shares sum to 1).
// Worked value: 28.965 g/mol.

namespace Emberwright.Stove.Fire;

/// <summary>Combustion air of a stated humidity. Amounts are per mole of dry air.</summary>
public sealed class CombustionAir
{
    /// <summary>Oxygen in dry air, volume share.</summary>
    public const double OxygenShare = 0.20946;

    /// <summary>One mole of dry air.</summary>
    public static GasMix DryMole { get; } = new(CarbonDioxide: 0.00036, Nitrogen: 0.78084, Oxygen: OxygenShare, Argon: 0.00934);

    /// <summary>Air without water vapour.</summary>
    public static CombustionAir Dry { get; } = new(0);

    /// <summary>Air of a humidity.</summary>
    /// <param name="humidityKgPerKg">Water vapour per dry air, kg/kg; 0 … 0.1.</param>
    /// <exception cref="InputException">Humidity outside its range.</exception>
    public CombustionAir(double humidityKgPerKg)
    {
        HumidityKgPerKg = InputException.Require(humidityKgPerKg, 0, 0.1, "air humidity", "kg/kg",
            "Give kg of water per kg of dry air; a living room has about 0.006.");
        PerDryMole = DryMole + new GasMix(Water: humidityKgPerKg * DryMole.MassKg / MolarMass.Water);
        Kilogram = (1 / PerDryMole.MassKg) * PerDryMole;
        HeatPerKg = new HeatContent(Kilogram);
    }

    /// <summary>Water vapour per dry air, kg/kg.</summary>
    public double HumidityKgPerKg { get; }

    /// <summary>One mole of dry air with its water vapour, mol.</summary>
    public GasMix PerDryMole { get; }

    /// <summary>One kilogram of this (moist) air, mol.</summary>
    public GasMix Kilogram { get; }

    /// <summary>Heat of one kilogram of this air above 25 °C, J; its slope is cp in J/(kg K).</summary>
    public HeatContent HeatPerKg { get; }

    /// <summary>Gas constant, J/(kg K).</summary>
    public double GasConstantJPerKgK => PerDryMole.GasConstantJPerKgK;
}
