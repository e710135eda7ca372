namespace LogBook.Web.Hosting;

/// <summary>What the host says to the person who starts it.</summary>
public sealed class HostConsole
{
    private readonly List<string> _said = [];

    /// <summary>Lines said so far.</summary>
    public IReadOnlyList<string> Said
    {
        get
        {
            lock (_said)
            {
                return [.. _said];
            }
        }
    }

    /// <summary>Says a line.</summary>
    public void Say(string line)
    {
        lock (_said)
        {
            _said.Add(line);
        }

        Console.Out.WriteLine(line);
    }
}
