using System.Text.Json.Serialization;

namespace Chandlery.Core.Assessed.Reports;

[JsonSerializable(typeof(AssessmentReport))]
[JsonSerializable(typeof(AssessmentReport[]))]
internal sealed partial class AssessmentJsonContext : JsonSerializerContext;
