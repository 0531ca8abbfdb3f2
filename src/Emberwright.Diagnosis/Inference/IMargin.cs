namespace Emberwright.Diagnosis.Inference;

/// <summary>
/// Evidence whose probability depends smoothly on one standard deviate z of the model: a yes or no, a grade, a voltage
/// behind a switch. It joins the fit beside the readings.
/// </summary>
internal interface IMargin
{
    /// <summary>The quantities that z is made of; at most four.</summary>
    IReadOnlyList<Quantity> Quantities { get; }

    /// <summary>z, and its slopes by the quantities.</summary>
    /// <param name="values">Values of <see cref="Quantities"/>.</param>
    /// <param name="slopes">Receives ∂z/∂value.</param>
    double Deviate(ReadOnlySpan<double> values, Span<double> slopes);

    /// <summary>ln of the evidence's probability at z, its slope, and its curvature −∂²/∂z², never below 0.</summary>
    MarginPoint At(double z);
}

/// <summary>ln P of a margin at one z.</summary>
/// <param name="LnProbability">ln P.</param>
/// <param name="Slope">∂ln P/∂z.</param>
/// <param name="Curvature">−∂²ln P/∂z², at least 0.</param>
internal readonly record struct MarginPoint(double LnProbability, double Slope, double Curvature);
