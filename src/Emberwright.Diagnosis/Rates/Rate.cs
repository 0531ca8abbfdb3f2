namespace Emberwright.Diagnosis.Rates;

/// <summary>A number of the priors and where it comes from. It is what is known before anything is seen, not a finding.</summary>
/// <param name="Value">For a fault its share of breakdown calls, %; for a passage its mean fouling per tonne of fuel, −ln of the share left open.</param>
/// <param name="Origin">Where it comes from: common practice, memory, the firm's own file, a number of closed visits.</param>
public sealed record Rate(double Value, string Origin);
