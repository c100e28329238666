using Chandlery.Yaml;

namespace Chandlery.Core.Declared;

/// <summary>All declarations of a maker's folder, found by kind and name.</summary>
public sealed class Catalogue
{
    private readonly Dictionary<(Type Kind, string Id), IDeclaration> byId = [];

    // A catalogue of thousands is asked for its maker with every candle.
    private readonly ILookup<Type, IDeclaration> byKind;

    private readonly List<WrongFile> wrong;

    /// <summary>Collects declarations; two of one kind with the same name are a problem, and nobody can refer to them.</summary>
    /// <param name="declarations">What could be read.</param>
    /// <param name="problems">Collects names that stand twice.</param>
    /// <param name="wrongFiles">Files of the same folder that could not be read.</param>
    public Catalogue(IEnumerable<IDeclaration> declarations, Problems problems, IEnumerable<WrongFile>? wrongFiles = null)
    {
        wrong = [.. wrongFiles ?? []];
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
                wrong.Add(new WrongFile(declaration.Id, KindOf(declaration.GetType()), declaration.Place.File));
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

    /// <summary>The batches that were poured of a candle.</summary>
    public IEnumerable<Batch> BatchesOf(Candle candle) => OfKind<Batch>().Where(b => b.Candle.Id == candle.Id);

    /// <summary>Files that cannot be used because of problems of their own.</summary>
    public IReadOnlyList<WrongFile> Wrong => wrong;

    /// <summary>The first wrong file of a kind, whatever its name; null when there is none.</summary>
    public WrongFile? WrongOfKind<T>()
        where T : IDeclaration => wrong.Find(w => w.Kind == KindOf(typeof(T)));

    /// <summary>The wrong file that shares a declaration's kind and name; null when there is none.</summary>
    public WrongFile? WrongTwin(IDeclaration declaration) => Named(KindOf(declaration.GetType()), declaration.Id);

    /// <summary>
    /// The declaration that is referred to. When its file is wrong, that is noted as the cause; when there is none, a problem with
    /// a suggestion is.
    /// </summary>
    public T? Find<T>(Reference reference, Problems problems)
        where T : class, IDeclaration
    {
        string kind = KindOf(typeof(T));
        bool isThere = byId.TryGetValue((typeof(T), reference.Id), out IDeclaration? found);
        WrongFile? cause = Named(kind, reference.Id) ?? (isThere ? null : Named(null, reference.Id));
        if (cause is not null)
        {
            problems.AddCausedBy(cause.File, reference.Place, $"{cause.File} has problems, so there is no {kind} '{reference.Id}'.");
            return null;
        }

        if (isThere)
        {
            return (T)found!;
        }

        List<string> known = [.. OfKind<T>().Select(d => d.Id)];
        string remedy =
            Suggestion.Nearest(reference.Id, known) is { } near ? $"Did you mean '{near}'?"
            : known.Count == 0 ? $"No {kind} is declared in this folder."
            : $"Declared here: {string.Join(", ", known)}.";
        problems.Add(reference.Place, $"There is no {kind} named '{reference.Id}'.", remedy);
        return null;
    }

    private WrongFile? Named(string? kind, string id) => wrong.Find(w => w.Id == id && w.Kind == kind);

    private static string KindOf(Type type) => type.Name.ToLowerInvariant();
}
