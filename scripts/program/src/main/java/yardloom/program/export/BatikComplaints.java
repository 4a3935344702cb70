package yardloom.program.export;

import org.apache.batik.transcoder.ErrorHandler;
import org.apache.batik.transcoder.TranscoderException;

/** Takes every complaint of Batik for a fault: our own drawings have to be clean. */
final class BatikComplaints implements ErrorHandler {
  @Override
  public void error(TranscoderException e) throws TranscoderException {
    throw e;
  }

  @Override
  public void fatalError(TranscoderException e) throws TranscoderException {
    throw e;
  }

  @Override
  public void warning(TranscoderException e) throws TranscoderException {
    throw e;
  }
}
