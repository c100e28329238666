using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;
using Chandlery.Paper.Proofs;
using Chandlery.Register;

namespace Chandlery.Cli.Answers;

/// <summary>JSON of what commands say to programs, made at build time.</summary>
[JsonSourceGenerationOptions(PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase, WriteIndented = true)]
[JsonSerializable(typeof(AddedAnswer[]))]
[JsonSerializable(typeof(ArrangementAnswer[]))]
[JsonSerializable(typeof(CeilingAnswer[]))]
[JsonSerializable(typeof(DesignAnswer[]))]
[JsonSerializable(typeof(DispatchAnswer[]))]
[JsonSerializable(typeof(DraftAnswer))]
[JsonSerializable(typeof(Inspection[]))]
[JsonSerializable(typeof(KindAnswer[]))]
[JsonSerializable(typeof(RegisterAnswer))]
[JsonSerializable(typeof(RegisterEntry[]))]
[JsonSerializable(typeof(SafetySheetAnswer[]))]
[JsonSerializable(typeof(SetAnswer[]))]
[JsonSerializable(typeof(TraceAnswer[]))]
[JsonSerializable(typeof(UfiAnswer))]
[JsonSerializable(typeof(VersionAnswer))]
internal sealed partial class AnswerJson : JsonSerializerContext
{
    /// <summary>As written for people's eyes too: letters of other languages stay letters.</summary>
    public static AnswerJson Plain { get; } =
        new(
            new JsonSerializerOptions
            {
                PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
                WriteIndented = true,
                Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
            }
        );
}
