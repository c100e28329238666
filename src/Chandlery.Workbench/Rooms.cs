using Chandlery.Files;

namespace Chandlery.Workbench;

/// <summary>The folders that the page can work in: the maker's own, and the example, a copy of it that goes when the program ends.</summary>
internal sealed class Rooms : IDisposable
{
    private readonly Workroom own;
    private Workroom? example;

    /// <summary>Begins in the maker's own folder.</summary>
    public Rooms(Workroom own)
    {
        this.own = own;
        Current = own;
    }

    /// <summary>The folder that the page works in now.</summary>
    public Workroom Current { get; private set; }

    /// <summary>Whether that is the example.</summary>
    public bool IsExample => Current != own;

    /// <summary>Goes into the example, which is laid out when it is first asked for.</summary>
    public void OpenExample()
    {
        if (example is null)
        {
            string folder = Directory.CreateTempSubdirectory("chandlery-example-").FullName;
            foreach ((string name, string text) in ShippedFiles.Example())
            {
                AtomicFile.Write(Path.Combine(folder, name), text);
            }

            example = own.Beside(folder);
        }

        Current = example;
    }

    /// <summary>Goes back into the maker's own folder.</summary>
    public void OpenOwn() => Current = own;

    /// <inheritdoc/>
    public void Dispose()
    {
        if (example is not null)
        {
            Directory.Delete(example.Root, recursive: true);
        }
    }
}
