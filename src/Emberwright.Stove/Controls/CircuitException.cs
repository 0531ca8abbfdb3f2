namespace Emberwright.Stove.Controls;

/// <summary>A circuit cannot be solved as it is described; the message names the component or node and the remedy.</summary>
public sealed class CircuitException : Exception
{
    /// <summary>Creates the error.</summary>
    /// <param name="message">What is wrong, where, and what to do.</param>
    public CircuitException(string message) : base(message) { }
}
