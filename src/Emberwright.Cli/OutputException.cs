namespace Emberwright.Cli;

/// <summary>A file that cannot be written; the message names it and the remedy.</summary>
internal sealed class OutputException(string message, Exception inner) : Exception(message, inner);
