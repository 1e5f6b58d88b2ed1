using Gatewright.Printing.Faces;

namespace Gatewright.Printing.Tests.Faces;

public sealed class FaceTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("gw-faces-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void The_best_face_of_all_folders_is_taken_wherever_it_lies()
    {
        Put("a/arial.ttf", "a/arialbd.ttf", "b/deep/DejaVuSans.ttf", "c/DejaVuSans-Bold.ttf");
        Assert.Equal(
            new Face("DejaVu Sans", In("b/deep/DejaVuSans.ttf"), In("c/DejaVuSans-Bold.ttf")),
            Face.Find([In("a"), In("b"), In("c")]));
    }

    [Fact]
    public void A_face_without_its_bold_letters_will_not_do()
    {
        Put("DejaVuSans.ttf", "LiberationSans-Regular.ttf", "LiberationSans-Bold.ttf");
        Assert.Equal("Liberation Sans", Face.Find([_folder]).Name);
    }

    [Fact]
    public void Where_there_is_none_it_is_said_what_to_install_and_where_was_looked()
    {
        string missing = Path.Combine(_folder, "no-such");
        MissingFaceException told = Assert.Throws<MissingFaceException>(() => Face.Find([_folder, missing]));
        Assert.Contains("apt-get install fonts-dejavu-core", told.Message, StringComparison.Ordinal);
        Assert.Contains(FaceFolders.Variable, told.Message, StringComparison.Ordinal);
        Assert.Contains(missing, told.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_folder_that_is_named_is_looked_in_alone()
    {
        Assert.Equal(["/faces"], FaceFolders.Of(name => name == FaceFolders.Variable ? "/faces" : "/other"));
        Assert.Contains("/usr/share/fonts", FaceFolders.Of(_ => null));
    }

    private string In(string path) => Path.Combine(_folder, path);

    private void Put(params string[] files)
    {
        foreach (string file in files)
        {
            Directory.CreateDirectory(Path.GetDirectoryName(In(file))!);
            File.WriteAllText(In(file), string.Empty);
        }
    }
}
