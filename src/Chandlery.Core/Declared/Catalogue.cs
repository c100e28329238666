using Chandlery.Yaml;

namespace Chandlery.Core.Declared;

/// <summary>All declarations of a maker's folder, found by kind and name.</summary>
public sealed class Catalogue
{
    private readonly Dictionary<(Type Kind, string Id), IDeclaration> byId = [];

    // A catalogue of thousands is asked for its maker with every candle.
    private readonly ILookup<Type, IDeclaration> byKind;

    /// <summary>Collects declarations; two of one kind with the same name are a problem.</summary>
    public Catalogue(IEnumerable<IDeclaration> declarations, Problems problems)
    {
        var all = new List<IDeclaration>();
        foreach (IDeclaration declaration in declarations)
        {
            if (!byId.TryAdd((declaration.GetType(), declaration.Id), declaration))
            {
                IDeclaration first = byId[(declaration.GetType(), declaration.Id)];
                problems.Add(
                    declaration.Place,
                    $"There are two files named '{declaration.Id}' of this kind; the other is {first.Place.File}.",
                    "Rename one of them."
                );
            }

            all.Add(declaration);
        }

        All = all;
        byKind = all.ToLookup(d => d.GetType());
    }

    /// <summary>Everything, in the order given.</summary>
    public IReadOnlyList<IDeclaration> All { get; }

    /// <summary>All declarations of a kind.</summary>
    public IEnumerable<T> OfKind<T>()
        where T : IDeclaration => byKind[typeof(T)].Cast<T>();

    /// <summary>The declaration that is referred to; notes a problem with a suggestion when there is none.</summary>
    public T? Find<T>(Reference reference, Problems problems)
        where T : class, IDeclaration
    {
        if (byId.TryGetValue((typeof(T), reference.Id), out IDeclaration? found))
        {
            return (T)found;
        }

        string kind = typeof(T).Name.ToLowerInvariant();
        List<string> known = [.. OfKind<T>().Select(d => d.Id)];
        string remedy =
            Suggestion.Nearest(reference.Id, known) is { } near ? $"Did you mean '{near}'?"
            : known.Count == 0 ? $"No {kind} is declared in this folder (or its file has problems)."
            : $"Declared here: {string.Join(", ", known)}.";
        problems.Add(reference.Place, $"There is no {kind} named '{reference.Id}'.", remedy);
        return null;
    }
}
