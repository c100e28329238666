using System.Text.Json.Serialization;

namespace Chandlery.Cli.Commands;

/// <summary>JSON of statements, made at build time.</summary>
[JsonSerializable(typeof(Dictionary<string, StatementLine>))]
internal sealed partial class StatementsJson : JsonSerializerContext;
