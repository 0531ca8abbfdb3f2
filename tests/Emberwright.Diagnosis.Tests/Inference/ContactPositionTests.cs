using Emberwright.Stove;
using Emberwright.Stove.Controls;
using Emberwright.Stove.Faults;
using Emberwright.Stove.Patterns;
using Xunit;

namespace Emberwright.Diagnosis.Tests.Inference;

/// <summary>Discs follow the temperature of their place, with their tolerance; only one that does not is at fault (common practice, no source).</summary>
public class ContactPositionTests
{
    private static double Probability(string fault, params Evidence[] evidence) =>
        Diagnose.Run(Bench.Case, evidence, Bench.Catalogue).Suspects.FirstOrDefault(s => s.Fault == fault)?.Probability ?? 0;

    private static ReadingEvidence Across(string contact, double volts) => new("v", 0, new Observable(Measure.Voltage, contact, Condition.HighBurn), volts);

    private static ReadingEvidence Exhaust(double celsius) => new("t", 0, new Observable(Measure.Temperature, Places.Collar, Condition.HighBurn), celsius);

    [Fact]
    public void An_open_proof_disc_in_hot_exhaust_is_bad_and_in_cool_exhaust_may_be_right()
    {
        var complaint = new SignEvidence("c", 0, Complaints.Sign, Complaints.StopsProving);
        var hot = Probability("proof-disc-bad", complaint, Across(ComponentIds.ProofDisc, 120), Exhaust(160)) + Probability("proof-disc-cold", complaint, Across(ComponentIds.ProofDisc, 120), Exhaust(160));
        var cool = Probability("proof-disc-bad", complaint, Across(ComponentIds.ProofDisc, 120), Exhaust(42)) + Probability("proof-disc-cold", complaint, Across(ComponentIds.ProofDisc, 120), Exhaust(42));
        Assert.True(hot > 0.8, $"hot {hot}");
        Assert.True(cool < hot - 0.2, $"cool {cool}, hot {hot}");
    }

    [Fact]
    public void The_next_check_foresees_the_disc()
    {
        var posterior = Diagnose.Infer(Bench.Case, [], Bench.Catalogue).Posterior!;
        Span<double> mean = stackalloc double[1];
        Span<double> variance = stackalloc double[1];
        posterior.Predict(0, [new Observable(Measure.Voltage, ComponentIds.ProofDisc, Condition.HighBurn)], mean, variance);
        Assert.InRange(mean[0], 0, 5); // a sound stove's exhaust is far above 49 °C on high
    }
}
