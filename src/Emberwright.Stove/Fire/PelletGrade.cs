namespace Emberwright.Stove.Fire;

/// <summary>
/// Limits of one grade of wood pellets for homes by ISO 17225-2:2021 (from memory; the mechanical durability of A1
/// was 97.5 % in the edition of 2014). A grade is a set of limits, not a fuel: a bag within it can still burn badly.
/// </summary>
/// <param name="Name">A1, A2 or B.</param>
/// <param name="MoistureMost">Water, share as received.</param>
/// <param name="AshMost">Ash, share of dry mass.</param>
/// <param name="NetLeastJPerKg">Net heating value as received, J/kg (4.6 kWh/kg).</param>
/// <param name="BulkDensityLeast">Bulk density, kg/m³.</param>
/// <param name="BulkDensityMost">Bulk density, kg/m³.</param>
/// <param name="FinesMost">Fines below 3.15 mm, share as received, in small bags at the factory gate.</param>
/// <param name="DurabilityLeast">Mechanical durability, share as received.</param>
/// <param name="NitrogenMost">N, share of dry mass.</param>
/// <param name="SulfurMost">S, share of dry mass.</param>
/// <param name="ChlorineMost">Cl, share of dry mass.</param>
public sealed record PelletGrade(
    string Name,
    double MoistureMost,
    double AshMost,
    double NetLeastJPerKg,
    double BulkDensityLeast,
    double BulkDensityMost,
    double FinesMost,
    double DurabilityLeast,
    double NitrogenMost,
    double SulfurMost,
    double ChlorineMost)
{
    private const double KilowattHour = 3.6e6;

    /// <summary>Best grade: stem wood and clean residues.</summary>
    public static PelletGrade A1 { get; } = new("A1", 0.10, 0.007, 4.6 * KilowattHour, 600, 750, 0.010, 0.980, 0.003, 0.0004, 0.0002);

    /// <summary>Second grade: whole trees, bark within bounds.</summary>
    public static PelletGrade A2 { get; } = new("A2", 0.10, 0.012, 4.6 * KilowattHour, 600, 750, 0.010, 0.975, 0.005, 0.0005, 0.0002);

    /// <summary>Third grade: also bark, used wood without treatment. Most stoves' listings exclude it.</summary>
    public static PelletGrade B { get; } = new("B", 0.10, 0.020, 4.6 * KilowattHour, 600, 750, 0.010, 0.965, 0.010, 0.0005, 0.0003);

    /// <summary>All grades, best first.</summary>
    public static IReadOnlyList<PelletGrade> All { get; } = [A1, A2, B];

    /// <summary>What of a sample breaks this grade; empty when nothing that was measured does.</summary>
    public IReadOnlyList<GradeBreach> Breaches(PelletSample sample)
    {
        var breaches = new List<GradeBreach>();
        Most("moisture", sample.Moisture, MoistureMost);
        Most("ash", sample.Ash, AshMost);
        Least("net heating value", sample.NetJPerKg, NetLeastJPerKg);
        Least("bulk density", sample.BulkDensityKgPerM3, BulkDensityLeast);
        Most("bulk density", sample.BulkDensityKgPerM3, BulkDensityMost);
        Most("fines", sample.Fines, FinesMost);
        Least("durability", sample.Durability, DurabilityLeast);
        Most("nitrogen", sample.Nitrogen, NitrogenMost);
        Most("sulfur", sample.Sulfur, SulfurMost);
        Most("chlorine", sample.Chlorine, ChlorineMost);
        return breaches;

        void Most(string property, double? value, double limit)
        {
            if (value > limit) breaches.Add(new GradeBreach(property, value.Value, limit));
        }

        void Least(string property, double? value, double limit)
        {
            if (value < limit) breaches.Add(new GradeBreach(property, value.Value, limit));
        }
    }

    /// <summary>Best grade a sample does not break by what was measured; null when it breaks every one.</summary>
    public static PelletGrade? BestFor(PelletSample sample) => All.FirstOrDefault(grade => grade.Breaches(sample).Count == 0);
}

/// <summary>What was measured or printed of a bag of pellets; null where unknown. Shares as in <see cref="PelletGrade"/>.</summary>
/// <param name="Moisture">Water, share as received.</param>
/// <param name="Ash">Ash, share of dry mass.</param>
/// <param name="NetJPerKg">Net heating value as received, J/kg.</param>
/// <param name="BulkDensityKgPerM3">Bulk density, kg/m³.</param>
/// <param name="Fines">Fines below 3.15 mm, share as received.</param>
/// <param name="Durability">Mechanical durability, share as received.</param>
/// <param name="Nitrogen">N, share of dry mass.</param>
/// <param name="Sulfur">S, share of dry mass.</param>
/// <param name="Chlorine">Cl, share of dry mass.</param>
public sealed record PelletSample(
    double? Moisture = null,
    double? Ash = null,
    double? NetJPerKg = null,
    double? BulkDensityKgPerM3 = null,
    double? Fines = null,
    double? Durability = null,
    double? Nitrogen = null,
    double? Sulfur = null,
    double? Chlorine = null);

/// <summary>One property of a sample outside a grade.</summary>
/// <param name="Property">The property in words.</param>
/// <param name="Value">What it is.</param>
/// <param name="Limit">What the grade allows.</param>
public sealed record GradeBreach(string Property, double Value, double Limit);
