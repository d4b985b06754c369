namespace Ashery.Clinic.Words;

/// <summary>What a text says of one question, gathered clause by clause.</summary>
internal sealed class SaidWords(int choices)
{
    private readonly double[] near = new double[choices];
    private readonly double[] general = new double[choices];
    private readonly bool[] denied = new bool[choices];

    public void Say(Phrase phrase, double weight)
    {
        var into = phrase.General ? general : near;
        foreach (var choice in phrase.Choices)
        {
            into[choice] = Math.Max(into[choice], weight);
        }
    }

    public void Deny(Phrase phrase)
    {
        foreach (var choice in phrase.Choices)
        {
            denied[choice] = true;
        }
    }

    /// <summary>Weights of the choices: named ones; else "anything but none"; else all that were not denied. Null when nothing was said.</summary>
    public double[]? Weights()
    {
        var source = Array.Exists(near, static w => w > 0) ? near : Array.Exists(general, static w => w > 0) ? general : null;
        if (source is null)
        {
            if (!Array.Exists(denied, static d => d) || Array.TrueForAll(denied, static d => d))
            {
                return null;
            }

            return Array.ConvertAll(denied, static d => d ? 0.0 : 1.0);
        }

        // Words said only in brackets are all there is: they count in full.
        var most = source.Max();
        return Array.ConvertAll(source, w => w / most);
    }
}
