namespace Emberwright.Diagnosis.Inference;

/// <summary>A problem evaluated at one point: misfit, its gradient and its Gauss–Newton curvature.</summary>
internal sealed class Linearisation
{
    /// <summary>c, the point.</summary>
    public required double[] Point { get; init; }

    /// <summary>Φ = −ln(prior density up to its constant) − ln(likelihood up to its constant).</summary>
    public required double Misfit { get; init; }

    /// <summary>∂Φ/∂c.</summary>
    public required double[] Gradient { get; init; }

    /// <summary>H ≈ ∂²Φ/∂c², positive definite, row major.</summary>
    public required double[] Curvature { get; init; }

    /// <summary>y − h(c) of each reading.</summary>
    public required double[] Residual { get; init; }

    /// <summary>∂h/∂c, a row for each reading.</summary>
    public required double[] Jacobian { get; init; }

    /// <summary>z of each margin.</summary>
    public required double[] Deviates { get; init; }

    /// <summary>∂z/∂c, a row for each margin.</summary>
    public required double[] MarginJacobian { get; init; }

    /// <summary>True when every state could be solved and every quantity is finite.</summary>
    public required bool Solved { get; init; }
}
