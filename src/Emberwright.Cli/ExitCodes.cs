namespace Emberwright.Cli;

/// <summary>How a command ends.</summary>
internal static class ExitCodes
{
    /// <summary>Nothing to report.</summary>
    public const int Ok = 0;
    /// <summary>Something was found: a reading out of band, a suspect, a stop, a check to do.</summary>
    public const int Findings = 1;
    /// <summary>Bad input; a result may have been written all the same.</summary>
    public const int BadInput = 2;
}
