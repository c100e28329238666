using Chandlery.Core.Declared;
using Chandlery.Yaml;

namespace Chandlery.Files;

/// <summary>What came of reading a file.</summary>
/// <param name="Declaration">What it declares; null when it is wrong.</param>
/// <param name="Wrong">The file as a wrong one; null when it could be read.</param>
/// <param name="Problems">What is wrong with it.</param>
internal sealed record ReadDeclaration(IDeclaration? Declaration, WrongFile? Wrong, IReadOnlyList<Problem> Problems);
