// Question: how much air does a kilogram of fuel need, and what flue gas does it make?
// Equations, per kg of fuel as fired with moisture w, amounts in mol:
//   C = (1−w)c/M_C and likewise H, O, N, S;  O2 demand = C + H/4 + S − O/2;  dry air A = O2 demand / 0.20946
//   stoichiometric products: CO2 = C, H2O = H/2 + w/M_H2O, SO2 = S, N2 = N/2, and what the air brings besides oxygen
//   flue gas at λ = products + (λ−1)·air.
// Symbols: c … s shares of dry mass; w moisture, share as fired; M molar mass, kg/mol; λ air ratio.
// Validity: λ ≥ 1. Below it the fuel cannot burn out: FlueGasAt refuses; the Newton-loop functions below give the products
//   of the share λ of the fuel that burns, and their caller must mark the fire as starved.
// Assumptions: complete burnout but for a stated CO; ash inert and left behind; fuel nitrogen ends as N2.
// Source: element balance (any text, e.g. Baukal, The John Zink Combustion Handbook, ch. 2).
// Worked value: dry wood CH1.4O0.6 needs 6.307 kg of dry air per kg.

namespace Emberwright.Stove.Fire;

/// <summary>
/// Combustion arithmetic of one fuel in one air, worked out once. Amounts are per kilogram of fuel as fired.
/// All evaluations are cheap and allocate nothing.
/// </summary>
public sealed class Stoichiometry
{
    private readonly HeatContent productsHeat;
    private readonly HeatContent airHeat;

    /// <summary>Works out the fuel in dry air.</summary>
    public Stoichiometry(Fuel fuel) : this(fuel, CombustionAir.Dry)
    {
    }

    /// <summary>Works out the fuel in air of a humidity.</summary>
    /// <exception cref="InputException">The fuel needs no air.</exception>
    public Stoichiometry(Fuel fuel, CombustionAir air)
    {
        Fuel = fuel;
        Air = air;
        var dry = 1 - fuel.Moisture;
        var carbon = dry * fuel.Dry.Carbon / MolarMass.Carbon;
        var hydrogen = dry * fuel.Dry.Hydrogen / MolarMass.HydrogenAtom;
        var oxygen = dry * fuel.Dry.Oxygen / MolarMass.OxygenAtom;
        var nitrogen = dry * fuel.Dry.Nitrogen / MolarMass.NitrogenAtom;
        var sulfur = dry * fuel.Dry.Sulfur / MolarMass.Sulfur;

        OxygenDemandMol = carbon + hydrogen / 4 + sulfur - oxygen / 2;
        if (!(OxygenDemandMol > 0))
            throw new InputException("fuel analysis", "the oxygen in the fuel exceeds what it needs to burn", "Check carbon, hydrogen and oxygen of the dry analysis.");
        DryAirMol = OxygenDemandMol / CombustionAir.OxygenShare;
        StoichiometricAir = DryAirMol * air.PerDryMole;
        StoichiometricFlue = StoichiometricAir + new GasMix(
            CarbonDioxide: carbon,
            Water: hydrogen / 2 + fuel.Moisture / MolarMass.Water,
            SulfurDioxide: sulfur,
            Nitrogen: nitrogen / 2,
            Oxygen: -OxygenDemandMol);
        // Rounding must not leave a trace of oxygen at λ = 1.
        StoichiometricFlue = StoichiometricFlue with { Oxygen = 0 };
        AirKgPerKg = StoichiometricAir.MassKg;
        productsHeat = new HeatContent(StoichiometricFlue);
        airHeat = new HeatContent(StoichiometricAir);
    }

    /// <summary>The fuel.</summary>
    public Fuel Fuel { get; }

    /// <summary>The combustion air.</summary>
    public CombustionAir Air { get; }

    /// <summary>O2 needed, mol per kg of fuel as fired.</summary>
    public double OxygenDemandMol { get; }

    /// <summary>O2 needed, kg per kg of fuel as fired.</summary>
    public double OxygenDemandKgPerKg => OxygenDemandMol * MolarMass.Oxygen;

    /// <summary>Dry air needed, mol per kg of fuel as fired.</summary>
    public double DryAirMol { get; }

    /// <summary>Dry air needed, kg per kg of fuel as fired.</summary>
    public double DryAirKgPerKg => DryAirMol * CombustionAir.DryMole.MassKg;

    /// <summary>Air needed with its humidity, kg per kg of fuel as fired.</summary>
    public double AirKgPerKg { get; }

    /// <summary>Air needed with its humidity, mol per kg of fuel as fired.</summary>
    public GasMix StoichiometricAir { get; }

    /// <summary>Flue gas at λ = 1, mol per kg of fuel as fired.</summary>
    public GasMix StoichiometricFlue { get; }

    /// <summary>Highest possible CO2 in dry flue gas (at λ = 1), volume share.</summary>
    public double CarbonDioxideMax => StoichiometricFlue.DryShare(Gas.CarbonDioxide);

    /// <summary>λ of an air supply.</summary>
    /// <param name="airKgPerS">Air with its humidity, kg/s.</param>
    /// <param name="fuelKgPerS">Fuel as fired, kg/s; more than 0.</param>
    public double AirRatioOf(double airKgPerS, double fuelKgPerS) => airKgPerS / (fuelKgPerS * AirKgPerKg);

    /// <summary>Flue gas at an air ratio.</summary>
    /// <param name="airRatio">λ; at least 1.</param>
    /// <param name="carbonMonoxide">CO, volume share; 0 … 0.05. Its carbon is missing from CO2, half its amount is left over as O2.</param>
    /// <param name="basis">Whether the CO share counts water vapour.</param>
    /// <exception cref="InputException">λ below 1 or CO outside its range.</exception>
    public FlueGas FlueGasAt(double airRatio, double carbonMonoxide = 0, Basis basis = Basis.Dry)
    {
        InputException.Require(airRatio, 1, 1000, "air ratio", "", "Below 1 the fuel cannot burn out; check oxygen and carbon dioxide.");
        InputException.Require(carbonMonoxide, 0, 0.05, "carbon monoxide", "volume share", "Give ppm by volume; 10 000 ppm is a share of 0.01.");
        var burnt = StoichiometricFlue + (airRatio - 1) * StoichiometricAir;
        var whole = basis switch { Basis.Dry => burnt.DryMol, Basis.Wet => burnt.MoistMol };
        var co = carbonMonoxide * whole / (1 - carbonMonoxide / 2);
        return new FlueGas(airRatio, burnt + new GasMix(CarbonDioxide: -co, Oxygen: co / 2, CarbonMonoxide: co));
    }

    /// <summary>O2 in dry flue gas without CO, volume share, for a Newton loop; 0 below λ = 1.</summary>
    /// <param name="airRatio">λ.</param>
    /// <param name="slope">Receives ∂O2/∂λ.</param>
    public double OxygenDry(double airRatio, out double slope)
    {
        if (airRatio <= 1)
        {
            slope = 0;
            return 0;
        }
        var dryFlue = StoichiometricFlue.DryMol + (airRatio - 1) * DryAirMol;
        slope = OxygenDemandMol * StoichiometricFlue.DryMol / (dryFlue * dryFlue);
        return OxygenDemandMol * (airRatio - 1) / dryFlue;
    }

    /// <summary>Mean molar mass of moist flue gas without CO, kg/mol, for a Newton loop; that of λ = 1 below it.</summary>
    /// <param name="airRatio">λ.</param>
    /// <param name="slope">Receives ∂M/∂λ, kg/mol.</param>
    public double FlueMolarMass(double airRatio, out double slope)
    {
        var excess = Math.Max(0, airRatio - 1);
        var mol = StoichiometricFlue.MoistMol + excess * StoichiometricAir.MoistMol;
        var kg = StoichiometricFlue.MassKg + excess * AirKgPerKg;
        slope = airRatio < 1 ? 0 : (AirKgPerKg * mol - kg * StoichiometricAir.MoistMol) / (mol * mol);
        return kg / mol;
    }

    /// <summary>Heat of the flue gas of one kilogram of fuel above 25 °C, vapour not condensed, J/kg, for a Newton loop.</summary>
    /// <param name="airRatio">λ; below 1 the products of the share λ of the fuel.</param>
    /// <param name="temperatureK">Flue gas temperature, K; see <see cref="HeatContent"/> for its range.</param>
    /// <param name="slopeTemperature">Receives ∂/∂T, J/(kg K): heat capacity of that gas.</param>
    /// <param name="slopeAirRatio">Receives ∂/∂λ, J/kg.</param>
    public double FlueHeat(double airRatio, double temperatureK, out double slopeTemperature, out double slopeAirRatio)
    {
        var products = productsHeat.At(temperatureK, out var productsCapacity);
        if (airRatio < 1)
        {
            slopeTemperature = airRatio * productsCapacity;
            slopeAirRatio = products;
            return airRatio * products;
        }
        slopeAirRatio = airHeat.At(temperatureK, out var airCapacity);
        slopeTemperature = productsCapacity + (airRatio - 1) * airCapacity;
        return products + (airRatio - 1) * slopeAirRatio;
    }

    /// <summary>cp of moist flue gas, J/(kg K).</summary>
    /// <param name="airRatio">λ; at least 1.</param>
    /// <param name="temperatureK">Flue gas temperature, K.</param>
    public double FlueHeatCapacityJPerKgK(double airRatio, double temperatureK)
    {
        var excess = Math.Max(0, airRatio - 1);
        return (productsHeat.HeatCapacityAt(temperatureK) + excess * airHeat.HeatCapacityAt(temperatureK))
            / (StoichiometricFlue.MassKg + excess * AirKgPerKg);
    }
}
