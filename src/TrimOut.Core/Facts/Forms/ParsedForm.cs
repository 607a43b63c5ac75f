using TrimOut.Core.Houses;

namespace TrimOut.Core.Facts.Forms;

/// <summary>A value whose typed and stored forms are the same and do not depend on the house.</summary>
internal sealed class ParsedForm<T>(string hint, Func<string, Result<T>> read, Func<T, string> write, Func<T, string>? show = null) : Form<T>
    where T : notnull
{
    public override string Hint => hint;

    public override Result<T> Read(string typed, House house) => read(typed);

    public override string Write(T value) => write(value);

    public override Result<T> Decode(string stored) => read(stored);

    public override string Show(T value, House house) => (show ?? write)(value);
}
