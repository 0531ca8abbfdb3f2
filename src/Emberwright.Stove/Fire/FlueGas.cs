namespace Emberwright.Stove.Fire;

/// <summary>
/// Flue gas of one kilogram of fuel as fired. Every share says whether it is wet (water vapour counted) or dry
/// (as most analysers sample, after a water trap).
/// </summary>
/// <param name="AirRatio">λ, air supplied over air needed; at least 1.</param>
/// <param name="PerKgFuel">The gas of one kilogram of fuel as fired, mol.</param>
public readonly record struct FlueGas(double AirRatio, GasMix PerKgFuel)
{
    /// <summary>O2 in dry flue gas, volume share.</summary>
    public double OxygenDry => PerKgFuel.DryShare(Gas.Oxygen);

    /// <summary>O2 in moist flue gas, volume share.</summary>
    public double OxygenWet => PerKgFuel.WetShare(Gas.Oxygen);

    /// <summary>CO2 in dry flue gas, volume share.</summary>
    public double CarbonDioxideDry => PerKgFuel.DryShare(Gas.CarbonDioxide);

    /// <summary>CO2 in moist flue gas, volume share.</summary>
    public double CarbonDioxideWet => PerKgFuel.WetShare(Gas.CarbonDioxide);

    /// <summary>CO in dry flue gas, volume share.</summary>
    public double CarbonMonoxideDry => PerKgFuel.DryShare(Gas.CarbonMonoxide);

    /// <summary>Water vapour in moist flue gas, volume share.</summary>
    public double WaterWet => PerKgFuel.WetShare(Gas.Water);

    /// <summary>Mass of moist flue gas per mass of fuel as fired, kg/kg.</summary>
    public double MassKgPerKg => PerKgFuel.MassKg;

    /// <summary>Dry flue gas per fuel at 0 °C and 101325 Pa, m³/kg.</summary>
    public double DryNormalM3PerKg => PerKgFuel.DryMol * GasMix.NormalMolarVolumeM3;

    /// <summary>Moist flue gas per fuel at 0 °C and 101325 Pa, m³/kg.</summary>
    public double MoistNormalM3PerKg => PerKgFuel.MoistMol * GasMix.NormalMolarVolumeM3;

    /// <summary>Mean molar mass of moist flue gas, kg/mol.</summary>
    public double MolarMassKgPerMol => PerKgFuel.MeanMolarMassKgPerMol;

    /// <summary>Gas constant of moist flue gas, J/(kg K).</summary>
    public double GasConstantJPerKgK => PerKgFuel.GasConstantJPerKgK;

    /// <summary>Density of moist flue gas, kg/m³.</summary>
    /// <param name="temperatureK">Gas temperature, K.</param>
    /// <param name="pressurePa">Absolute pressure, Pa.</param>
    public double DensityKgPerM3(double temperatureK, double pressurePa) => pressurePa / (GasConstantJPerKgK * temperatureK);
}
