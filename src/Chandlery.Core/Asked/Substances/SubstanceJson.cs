using System.Text.Json.Serialization;

namespace Chandlery.Core.Asked.Substances;

/// <summary>JSON of what the law says of substances, made at build time.</summary>
[JsonSourceGenerationOptions(PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase, WriteIndented = true)]
[JsonSerializable(typeof(SubstanceAnswer))]
[JsonSerializable(typeof(SubstanceAnswer[]))]
public sealed partial class SubstanceJson : JsonSerializerContext;
