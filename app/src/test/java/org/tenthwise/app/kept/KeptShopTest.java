package org.tenthwise.app.kept;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tenthwise.app.session.ShopBook.Shop;

class KeptShopTest {

    @TempDir
    private Path folder;

    private KeptShop kept() {
        return new KeptShop(folder.resolve(KeptShop.FILE));
    }

    @Test
    void whatWasSaidIsThereAgainInItsOrder() {
        Shop shop = new Shop(List.of("Lathe 4", "Drehbank Süd = 2"), List.of("Setter 2", "Setter 1"), true);
        kept().keep(shop);
        assertEquals(shop, kept().kept());
    }

    @Test
    void aNameThatIsGoneIsNotThereAgain() {
        kept().keep(new Shop(List.of("a", "b"), List.of(), false));
        kept().keep(new Shop(List.of("b"), List.of(), false));
        assertEquals(List.of("b"), kept().kept().machines());
    }

    @Test
    void aFileThatIsNotThereOrCannotBeReadSaysNothing() throws Exception {
        assertEquals(Shop.NEW, kept().kept());
        Files.write(folder.resolve(KeptShop.FILE), new byte[] {'n', '=', '\\', 'u', 'x', (byte) 0xff});
        assertEquals(Shop.NEW, kept().kept());
    }
}
