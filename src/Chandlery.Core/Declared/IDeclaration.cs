using Chandlery.Yaml;

namespace Chandlery.Core.Declared;

/// <summary>Something that is declared in a file of its own.</summary>
public interface IDeclaration
{
    /// <summary>File name without its ending; unique within a kind.</summary>
    string Id { get; }

    /// <summary>Start of the declaration.</summary>
    TextPlace Place { get; }
}
