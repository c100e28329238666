using Chandlery.Yaml;

namespace Chandlery.Tests.Law.Readers;

/// <summary>A file with one slip in it.</summary>
/// <param name="Where">The field, such as <c>rules[0].group</c>.</param>
/// <param name="What">What was done to it.</param>
/// <param name="Tree">The whole file with it.</param>
internal sealed record TreeChange(string Where, string What, YamlMap Tree);
