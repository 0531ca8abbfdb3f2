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
    /// <exception cref="InputException">Moisture outside its range.</exception>
    public Fuel(string name, UltimateAnalysis dry, double moisture)
    {
        Name = name;
        Dry = dry;
        Moisture = InputException.Require(moisture, 0, 0.6, "moisture", "of mass as fired",
            "Give water per mass as fired (wet basis); pellets have 0.05 to 0.10.");
    }

    /// <summary>Name people know it by.</summary>
    public string Name { get; }

    /// <summary>Dry ultimate analysis, shares of dry mass.</summary>
    public UltimateAnalysis Dry { get; }

    /// <summary>Water, share of mass as fired (wet basis, not water per dry mass).</summary>
    public double Moisture { get; }

    /// <summary>Ash, share of mass as fired.</summary>
    public double AshAsFired => Dry.Ash * (1 - Moisture);

    /// <summary>The same fuel with another moisture.</summary>
    /// <exception cref="InputException">Moisture outside its range.</exception>
    public Fuel WithMoisture(double moisture) => new(Name, Dry, moisture);
}
