using Chandlery.Register;

namespace Chandlery.Tests.Support;

/// <summary>A place for one test's register, in either kind of store, that can be changed as nobody should.</summary>
public abstract class TestStore
{
    /// <summary>The register of a folder; a maker's file in it is made to name it.</summary>
    public abstract RegisterPlace In(string folder);

    /// <summary>What the option --register takes for it.</summary>
    public abstract string Named(string folder);

    /// <summary>The witness of the register in a folder.</summary>
    public abstract string Witness(string folder);

    /// <summary>Changes it behind the program's back.</summary>
    public abstract void Tamper(string folder, string sql);

    /// <summary>Fills the register of a folder with small entries, with its witness.</summary>
    public abstract void Fill(string folder);

    /// <summary>What is wrong with it.</summary>
    public IReadOnlyList<string> Verify(string folder)
    {
        using RegisterBook register = In(folder).OpenToRead();
        return register.Verify();
    }
}
