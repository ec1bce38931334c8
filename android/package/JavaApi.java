import java.io.File;
import java.io.FileInputStream;
import java.util.List;
import java.util.Set;
import org.codehaus.mojo.animal_sniffer.SignatureChecker;
import org.codehaus.mojo.animal_sniffer.logging.PrintWriterLogger;

/** Prints what a folder of classes calls of Java and Android that a signature file lacks: JavaApi SIGNATURE FOLDER. */
class JavaApi {
    public static void main(String[] arguments) throws Exception {
        var own = Set.of("kotlin.*", "studio.laydown.*", "com.sun.jna.*");
        var checker = new SignatureChecker(new FileInputStream(arguments[0]), own, new PrintWriterLogger(System.out));
        checker.setSourcePath(List.of());
        checker.process(new File(arguments[1]));
    }
}
