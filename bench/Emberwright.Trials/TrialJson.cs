using System.Text.Json.Serialization;
using Emberwright.Trials.Calibration;
using Emberwright.Trials.Sampling;
using Emberwright.Trials.Visits;

namespace Emberwright.Trials;

/// <summary>How rows are written.</summary>
[JsonSourceGenerationOptions(PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase, UseStringEnumConverter = true)]
[JsonSerializable(typeof(CalibrationRow))]
[JsonSerializable(typeof(VisitRow))]
[JsonSerializable(typeof(FixedCase))]
internal sealed partial class TrialJson : JsonSerializerContext;
