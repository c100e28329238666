using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;
using Chandlery.Core.SafetyFiles.Duties;
using Chandlery.Core.SafetyFiles.Incidents;
using Chandlery.Core.SafetyFiles.Listings;
using Chandlery.Core.SafetyFiles.Quantities;
using Chandlery.Core.SafetyFiles.Recalls;
using Chandlery.Core.SafetyFiles.TechnicalFiles;
using Chandlery.Core.SafetyFiles.Tests;

namespace Chandlery.Core.SafetyFiles;

/// <summary>JSON of the product-safety file, made at build time.</summary>
[JsonSourceGenerationOptions(PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase, WriteIndented = true)]
[JsonSerializable(typeof(ListingReport[]))]
[JsonSerializable(typeof(RecallReport))]
[JsonSerializable(typeof(IncidentReportLine[]))]
[JsonSerializable(typeof(TestReport[]))]
[JsonSerializable(typeof(WeighingLine[]))]
[JsonSerializable(typeof(PackagingReport))]
[JsonSerializable(typeof(DutyReport[]))]
[JsonSerializable(typeof(TechnicalFileReport[]))]
public sealed partial class SafetyFileJson : JsonSerializerContext
{
    /// <summary>As written for people's eyes too: letters of other languages stay letters.</summary>
    public static SafetyFileJson Plain { get; } =
        new(
            new JsonSerializerOptions
            {
                PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
                WriteIndented = true,
                Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
            }
        );
}
