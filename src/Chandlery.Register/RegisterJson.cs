using System.Text.Json.Serialization;

namespace Chandlery.Register;

/// <summary>JSON of the register, made at build time.</summary>
[JsonSourceGenerationOptions(PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase)]
[JsonSerializable(typeof(RegisterContent))]
[JsonSerializable(typeof(RegisterEntry))]
public sealed partial class RegisterJson : JsonSerializerContext;
