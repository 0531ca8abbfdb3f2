using Emberwright.Diagnosis;
using Emberwright.Stove;
using Emberwright.Visits.Journal;

namespace Emberwright.Cli;

/// <summary>How the engine's enumerations are said in the terminal and its JSON.</summary>
internal static class Words
{
    public static string Verdict(Verdict verdict) => verdict switch
    {
        Diagnosis.Verdict.In => "in",
        Diagnosis.Verdict.TooWeak => "too weak",
        Diagnosis.Verdict.TooStrong => "too strong",
        Diagnosis.Verdict.Low => "low",
        Diagnosis.Verdict.High => "high",
    };

    public static string Phase(Phase phase) => EnumWords.Of(phase);

    public static string OfParameter(Parameter parameter) => EnumWords.Of(parameter);

    /// <summary>Air and gas are read at ports, everything electrical at test points.</summary>
    public static bool IsPort(Observable observable) => observable.Measure is not
        (Measure.Voltage or Measure.Resistance or Measure.Current);
}
