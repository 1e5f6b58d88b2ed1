using Gatewright.Store.Faults;
using Gatewright.Store.Opening;

namespace Gatewright.Store.Tests.Opening;

public sealed class DataFolderTests(Stores stores)
{
    [Fact]
    public void A_missing_folder_is_made_with_those_it_is_in()
    {
        string folder = Path.Combine(stores.NewFolder(), "boathouse", "data");

        StoreLocation location = DataFolder.Locate(folder);

        Assert.True(Directory.Exists(folder));
        Assert.Equal(Path.Combine(folder, "gatewright.db"), location.Name);
        Assert.Empty(Directory.GetFileSystemEntries(folder));
    }

    [Fact]
    public void When_nothing_is_said_it_is_in_the_users_data_folder()
    {
        Assert.Equal("gatewright", Path.GetFileName(DataFolder.Usual));
        Assert.True(Path.IsPathFullyQualified(DataFolder.Usual));
    }

    [Fact]
    public void A_file_in_its_place_is_told()
    {
        string file = Path.Combine(stores.NewFolder(), "file");
        File.WriteAllText(file, "kept");

        StoreException said = Assert.Throws<StoreException>(() => DataFolder.Locate(file));

        Assert.Equal(StoreFault.NotAStore, said.Fault);
        Assert.Equal($"The data folder {file} is a file. Name a folder, such as the one that file is in.", said.Message);
        Assert.Equal("kept", File.ReadAllText(file));
    }

    [Fact]
    public void A_folder_that_cannot_be_made_is_told()
    {
        string file = Path.Combine(stores.NewFolder(), "file");
        File.WriteAllText(file, string.Empty);

        StoreException said = Assert.Throws<StoreException>(() => DataFolder.Locate(Path.Combine(file, "data")));

        Assert.Equal(StoreFault.Missing, said.Fault);
        Assert.Contains("cannot be made", said.Message, StringComparison.Ordinal);
        Assert.Throws<StoreException>(() => DataFolder.Locate(" "));
    }

    [Fact]
    public void A_folder_that_takes_no_file_is_told()
    {
        // The one such folder every Linux has, whoever the tests run as.
        Assert.SkipUnless(Directory.Exists("/proc/self"), "there is no /proc here");

        StoreException said = Assert.Throws<StoreException>(() => DataFolder.Locate("/proc/self"));

        Assert.Equal(StoreFault.ReadOnly, said.Fault);
    }
}
