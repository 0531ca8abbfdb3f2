using Emberwright.Diagnosis.Practice;

namespace Emberwright.Field.Practising;

/// <summary>Levels of practice in words.</summary>
public static class PracticeWords
{
    /// <summary>The words.</summary>
    public static string Of(PracticeLevel level) => level switch
    {
        PracticeLevel.Plain => T("PracticeWords.plain-one-frequent-fault"),
        PracticeLevel.Ordinary => T("PracticeWords.ordinary-one-fault-and-the-usual"),
        PracticeLevel.Tangled => T("PracticeWords.tangled-two-faults-a-vague-customer"),
    };
}
