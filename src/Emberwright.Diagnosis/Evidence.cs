using Emberwright.Stove;

namespace Emberwright.Diagnosis;

/// <summary>
/// One fact that bears on what is wrong. It is not the journal's entry but what diagnosis needs of it.
/// </summary>
/// <param name="Id">Id of the entry it came from; explanations refer to it.</param>
/// <param name="Epoch">
/// Number of actions done before it (0 = as found). An action redraws only the unknowns it names, so facts of
/// different epochs share everything else.
/// </param>
public abstract record Evidence(string Id, int Epoch);

/// <summary>A number read on the stove.</summary>
/// <param name="Id">Entry id.</param>
/// <param name="Epoch">Epoch.</param>
/// <param name="Observable">What was read, where, in which condition.</param>
/// <param name="Value">Value in the measure's SI unit.</param>
public sealed record ReadingEvidence(string Id, int Epoch, Observable Observable, double Value) : Evidence(Id, Epoch);

/// <summary>A sign seen, heard, smelled or told: a complaint, an answer, an observation, an alarm code.</summary>
/// <param name="Id">Entry id.</param>
/// <param name="Epoch">Epoch.</param>
/// <param name="Sign">Id of the sign in the catalogue.</param>
/// <param name="Outcome">Id of the outcome of that sign.</param>
public sealed record SignEvidence(string Id, int Epoch, string Sign, string Outcome) : Evidence(Id, Epoch);

/// <summary>An alarm code or blink count whose meaning nobody has stated; the card may know it.</summary>
/// <param name="Id">Entry id.</param>
/// <param name="Epoch">Epoch.</param>
/// <param name="Code">The code as the stove shows it.</param>
public sealed record CodeEvidence(string Id, int Epoch, string Code) : Evidence(Id, Epoch);

/// <summary>What one of the board's counters shows.</summary>
/// <param name="Id">Entry id.</param>
/// <param name="Epoch">Epoch.</param>
/// <param name="Counter">Id of the counter, see <see cref="Stove.Controls.Counters"/>; any other name stays unused.</param>
/// <param name="Value">What it shows; hours in h.</param>
public sealed record CounterEvidence(string Id, int Epoch, string Counter, double Value) : Evidence(Id, Epoch);

/// <summary>A setting of the board as found.</summary>
/// <param name="Id">Entry id.</param>
/// <param name="Epoch">Epoch.</param>
/// <param name="Parameter">Its name or number.</param>
/// <param name="Value">Its value.</param>
public sealed record ParameterEvidence(string Id, int Epoch, string Parameter, string Value) : Evidence(Id, Epoch);

/// <summary>Something done to the stove; later facts belong to a new epoch.</summary>
/// <param name="Id">Entry id.</param>
/// <param name="Epoch">The epoch that the action begins.</param>
/// <param name="Action">Id of the action in the catalogue, e.g. <c>clean-ash-passages</c>.</param>
public sealed record ActionEvidence(string Id, int Epoch, string Action) : Evidence(Id, Epoch);
