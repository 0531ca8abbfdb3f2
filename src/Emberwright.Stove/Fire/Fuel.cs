namespace Emberwright.Stove.Fire;

/// <summary>
/// A fuel as it goes into the burn pot: its dry analysis and its moisture. All rates "per kg" of a fuel elsewhere mean
/// per kg as fired, that is with this moisture and ash.
/// </summary>
public sealed record Fuel
{
    /// <summary>A fuel.</summary>
    /// <param name="name">Name people know it by.</param>
    /// <param name="dry">Dry ultimate analysis.</param>
    /// <param name="moisture">Water, share of the mass as fired; 0 … 0.6.</param>
    /// <param name="grossDryJPerKg">Gross (higher) heating value per dry mass from a laboratory's bomb, J/kg, 5e6 … 40e6; null computes it from the analysis.</param>
    /// <param name="origin">Where the analysis comes from.</param>
    /// <exception cref="InputException">Moisture or heating value outside its range.</exception>
    public Fuel(string name, UltimateAnalysis dry, double moisture, double? grossDryJPerKg = null, string origin = "entered")
    {
        Name = name;
        Dry = dry;
        Moisture = InputException.Require(moisture, 0, 0.6, "moisture", "of mass as fired",
            "Give water per mass as fired (wet basis); pellets have 0.05 to 0.10.");
        if (grossDryJPerKg is { } gross)
            InputException.Require(gross, 5e6, 40e6, "gross heating value", "J/kg dry", "Wood has about 20e6 J/kg dry.");
        GrossDryJPerKg = grossDryJPerKg;
        Origin = origin;
    }

    /// <summary>Name people know it by.</summary>
    public string Name { get; }

    /// <summary>Dry ultimate analysis, shares of dry mass.</summary>
    public UltimateAnalysis Dry { get; }

    /// <summary>Water, share of mass as fired (wet basis, not water per dry mass).</summary>
    public double Moisture { get; }

    /// <summary>Gross heating value per dry mass as measured, J/kg; null when not measured.</summary>
    public double? GrossDryJPerKg { get; }

    /// <summary>Where the analysis comes from.</summary>
    public string Origin { get; }

    /// <summary>Ash, share of mass as fired.</summary>
    public double AshAsFired => Dry.Ash * (1 - Moisture);

    /// <summary>The same fuel with another moisture.</summary>
    /// <exception cref="InputException">Moisture outside its range.</exception>
    public Fuel WithMoisture(double moisture) => new(Name, Dry, moisture, GrossDryJPerKg, Origin);

    /// <summary>The same fuel with a measured gross heating value per dry mass, J/kg.</summary>
    /// <exception cref="InputException">Heating value outside its range.</exception>
    public Fuel WithGross(double? grossDryJPerKg) => new(Name, Dry, Moisture, grossDryJPerKg, Origin);
}
