using Emberwright.Diagnosis.Practice;

namespace Emberwright.Field.Practising;

/// <summary>Levels of practice in words.</summary>
public static class PracticeWords
{
    /// <summary>The words.</summary>
    public static string Of(PracticeLevel level) => level switch
    {
        PracticeLevel.Plain => "Plain: one frequent fault",
        PracticeLevel.Ordinary => "Ordinary: one fault and the usual dirt",
        PracticeLevel.Tangled => "Tangled: two faults, a vague customer",
    };
}
